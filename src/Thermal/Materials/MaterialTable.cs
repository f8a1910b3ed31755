using CsvHelper;

namespace Thermal.Materials;

/// <summary>Reads a table of materials; the header of the built-in one describes every column.</summary>
internal static class MaterialTable
{
    private const double MPerMm = 0.001, MPerInch = 0.0254; // exact, by definition

    /// <summary>The quantities of a row in column order, with the limits that <see cref="Material"/> states.</summary>
    private static readonly (string Name, double Min, double Max)[] Quantities =
    [
        ("conductivity_w_per_mk", 0.001, 500),
        ("wet_conductivity_w_per_mk", 0.001, 500),
        ("density_kg_per_m3", 1, 9000),
        ("specific_heat_j_per_kgk", 100, 5000),
        ("vapour_resistance_factor", 1, 10_000_000),
        ("film_diffusion_thickness_m", 0.001, 10_000),
        ("emissivity", 0.01, 1),
        ("sorption_at_80_fraction", 0, 1),
    ];

    /// <summary>All columns, in their order, which is fixed for good.</summary>
    internal static readonly string[] Columns =
    [
        "key", "name", "group",
        .. Quantities.SelectMany(quantity => SpanColumns(quantity.Name)).ToArray(),
        "mould_class", "thicknesses_sold_mm", "thicknesses_sold_inch", "fire_note",
        "price_low", "price", "price_high", "price_currency", "price_source", "price_place",
    ];

    private const int FirstQuantity = 3, Mould = 43, Millimetres = 44, Inches = 45, Fire = 46, Price = 47, Currency = 50, PriceSource = 51;

    /// <summary>All materials of a table, in its order.</summary>
    /// <param name="stream">The table, UTF-8.</param>
    /// <param name="fileName">Its name, for messages.</param>
    /// <exception cref="InvalidDataException">Anything wrong; the message names file, line, material and column.</exception>
    internal static IReadOnlyList<Material> Read(Stream stream, string fileName)
    {
        var options = new CsvReaderOptions
        {
            Separator = ',', CommentPrefix = '#', TrackLineNumbers = true,
            MalformedData = CsvMalformedDataHandling.Throw, FieldCountMismatch = CsvFieldCountHandling.Throw,
        };
        using CsvReader reader = CsvReader.Create(stream, options, leaveOpen: true);
        try
        {
            return RowsOf(reader, fileName);
        }
        catch (CsvFormatException e)
        {
            throw new InvalidDataException($"{fileName}:{e.LineNumber}: {e.Message}", e);
        }
    }

    private static List<Material> RowsOf(CsvReader reader, string fileName)
    {
        reader.ReadHeader();
        if (!reader.Headers.SequenceEqual(Columns, StringComparer.Ordinal))
        {
            throw new InvalidDataException($"{fileName}: the columns must be {string.Join(',', Columns)}.");
        }
        List<Material> materials = [];
        HashSet<string> keys = new(StringComparer.Ordinal);
        while (reader.Read())
        {
            Material material = MaterialOf(new MaterialRow(reader, fileName));
            if (!keys.Add(material.Key))
            {
                throw new MaterialRow(reader, fileName).Fault(0, "is there twice");
            }
            materials.Add(material);
        }
        return materials;
    }

    private static Material MaterialOf(MaterialRow row)
    {
        Bounded? Figure(int quantity) => row.Figure(FirstQuantity + 5 * quantity, Quantities[quantity].Min, Quantities[quantity].Max);
        Bounded Needed(int quantity) => Figure(quantity) ?? throw row.Fault(FirstQuantity + 5 * quantity + 1, "must not be empty");
        Bounded? factor = Figure(4), film = Figure(5);
        if (factor is null == film is null)
        {
            throw row.Fault(FirstQuantity + 5 * 4 + 1, $"or {Quantities[5].Name} must be given, and only one of them");
        }
        return new Material
        {
            Key = row.Text(0),
            Name = row.Text(1),
            Group = row.Group(2),
            ConductivityWPerMK = Needed(0),
            WetConductivityWPerMK = Figure(1),
            DensityKgPerM3 = Needed(2),
            SpecificHeatJPerKgK = Needed(3),
            VapourResistanceFactor = factor,
            FilmDiffusionThicknessM = film,
            EmissivityFraction = Needed(6),
            SorptionAt80Fraction = Figure(7),
            MouldClass = row.MouldClass(Mould),
            ThicknessesSoldM = row.Lengths(Millimetres, MPerMm),
            InchThicknessesSoldM = row.Lengths(Inches, MPerInch),
            FireNote = row.Optional(Fire),
            PricePerM2Mm = row.Span(Price, PriceSource, 0, 10_000),
            PriceCurrency = row.Optional(Currency),
        };
    }

    private static IEnumerable<string> SpanColumns(string quantity) =>
        [$"{quantity}_low", quantity, $"{quantity}_high", $"{quantity}_source", $"{quantity}_place"];
}
