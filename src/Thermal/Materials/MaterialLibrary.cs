namespace Thermal.Materials;

/// <summary>The built-in generic materials. Read once, when first asked for.</summary>
public static class MaterialLibrary
{
    private static readonly Lazy<IReadOnlyList<Material>> Loaded = new(Load);

    private static readonly Lazy<Dictionary<string, Material>> ByKey =
        new(() => All.ToDictionary(material => material.Key, StringComparer.Ordinal));

    /// <summary>Every built-in material, in the order of the table: skins, plastics, wood, coverings, foams, wools, films, panes, fluids.</summary>
    /// <exception cref="InvalidDataException">The embedded table is damaged; the message names row and column.</exception>
    public static IReadOnlyList<Material> All => Loaded.Value;

    /// <summary>The material of this key, or null where there is none.</summary>
    /// <param name="key">A key such as birch_plywood; case and spelling must fit exactly.</param>
    /// <exception cref="InvalidDataException">The embedded table is damaged; the message names row and column.</exception>
    public static Material? Find(string key) => ByKey.Value.GetValueOrDefault(key);

    private static IReadOnlyList<Material> Load()
    {
        using Stream stream = typeof(MaterialLibrary).Assembly.GetManifestResourceStream("materials.csv")
            ?? throw new InvalidDataException("The table of materials is missing from the program.");
        return MaterialTable.Read(stream, "materials.csv");
    }
}
