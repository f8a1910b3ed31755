using System.Reflection;
using System.Text.RegularExpressions;
using Thermal.Assessments;
using Thermal.Materials;

namespace Thermal.Tests.Consistency;

/// <summary>Names keep the rules of the house: units, folders, words.</summary>
public sealed partial class NameTests
{
    private static readonly Assembly Physics = typeof(Guard).Assembly;

    /// <summary>Types whose numbers take the unit of the property that holds them.</summary>
    private static readonly Type[] WithoutUnit = [typeof(Bounded), typeof(Between)];

    /// <summary>Names with a reason of their own: counts a day, a factor of something, and figures whose unit stands beside them in the same record.</summary>
    private static readonly string[] WithReason = ["MealsPerDay", "ShowersPerDay", "HoursPerDay", "TemperatureFactorOfTransmittance", "FuelAmount", "FuelAmountPerDay", "HeatingFuelAmount", "HotWaterFuelAmount", "CookingFuelAmount", "MostFuelAmount", "LeastFuelAmount", "FigureInItsUnit", "figureInItsUnit"];

    private static readonly string[] Rooms = ["Utils", "Helpers", "Common", "Models", "Services", "Managers", "Utilities", "Shared", "Misc"];

    private static IEnumerable<(string Name, Type Type)> Numbers(Type type)
    {
        const BindingFlags own = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        IEnumerable<MethodInfo> methods = type.GetMethods(own).Where(method => !method.IsSpecialName && method.GetBaseDefinition().DeclaringType == type);
        return type.GetProperties(own).Select(property => (property.Name, property.PropertyType))
            .Concat(type.GetFields(own).Select(field => (field.Name, field.FieldType)))
            .Concat(methods.Select(method => (method.Name, method.ReturnType)))
            .Concat(methods.Cast<MethodBase>().Concat(type.GetConstructors(own)).Where(method => method.Name != "Deconstruct")
                .SelectMany(method => method.GetParameters()).Select(parameter => (parameter.Name!, parameter.ParameterType)));
    }

    private static bool IsNumber(Type type) =>
        type == typeof(double) || type == typeof(double?) || type == typeof(double[]) || type == typeof(IReadOnlyList<double>)
        || type == typeof(ReadOnlySpan<double>) || type == typeof(Span<double>) || type == typeof(Bounded) || type == typeof(Between);

    [Fact]
    public void Every_public_number_carries_its_unit_in_its_name() => Ground.NothingOffends(
        from type in Physics.ExportedTypes
        where !WithoutUnit.Contains(type)
        from number in Numbers(type)
        where IsNumber(number.Type) && number.Type != type && !UnitEnd().IsMatch(number.Name) && !WithReason.Contains(number.Name)
        select $"{type.FullName}: {number.Name}");

    /// <summary>An end such as M, WPerM2K or GPerM2H: a unit, perhaps Per and units multiplied; or a name that is a unit itself.</summary>
    [GeneratedRegex(@"(?:(?:M[23]?|Mm2?|Kg|G|L|S|H|C|K|Deg|Pa|W|J|Wh|KWh|A|Ah|V|Ppm|M2K)(?:Per(?:M[234]?|Mm|Kg|G|L|S|H|K4?|Pa|W|J|KWh|Day|Year)+)*|(?:Kg|G|M2K?)Per[A-Z]\w*|Fraction|Ratio|Factor|Count)$|^(?:hours|seconds)$", RegexOptions.CultureInvariant)]
    private static partial Regex UnitEnd();

    [Fact]
    public void A_name_without_a_unit_would_be_noticed()
    {
        Assert.All(["ThicknessM", "ConductivityWPerMK", "lossW", "insideC", "AirM3PerM2H", "StefanBoltzmannWPerM2K4", "RatioKgPerKg", "FactorRatio"], name => Assert.Matches(UnitEnd(), name));
        Assert.All(["Thickness", "conductivity", "Loss", "insideTemperature", "value", "UValue", "Lambda"], name => Assert.DoesNotMatch(UnitEnd(), name));
    }

    [Fact]
    public void Every_file_s_namespace_is_its_folder() => Ground.NothingOffends(
        from path in Ground.Files("src", "*.cs")
        let folder = Path.GetDirectoryName(path)!.Replace('\\', '/')["src/".Length..].Replace('/', '.')
        from line in Ground.Lines(path)
        where line.StartsWith("namespace ", StringComparison.Ordinal) && line != $"namespace {folder};"
        select $"{path}: {line}");

    [Fact]
    public void Every_source_file_has_a_namespace() => Assert.DoesNotContain(Ground.Files("src", "*.cs"),
        path => !path.EndsWith("Program.cs", StringComparison.Ordinal) && !Ground.Lines(path).Any(line => line.StartsWith("namespace ", StringComparison.Ordinal)));

    [Fact]
    public void No_room_is_named_for_its_furniture() => Ground.NothingOffends(
        from path in Ground.Files("src", "*.cs").Concat(Ground.Files("tests", "*.cs"))
        from part in path.Split('/')
        where Rooms.Any(room => part == room || part.EndsWith($"{room}.cs", StringComparison.Ordinal))
        select path);

    [Fact]
    public void A_type_stands_in_the_file_of_its_name() => Ground.NothingOffends(
        from path in Ground.Files("src/Thermal", "*.cs")
        let types = TypeLine().Matches(Ground.Text(path)).Select(match => match.Groups[1].Value).ToArray()
        let file = Path.GetFileNameWithoutExtension(path)
        where types.Length > 0 && !types.Contains(file) && !Families.Contains(file)
        select $"{path}: {string.Join(", ", types)}");

    /// <summary>Files that hold a small family of types under the family's name.</summary>
    private static readonly string[] Families = ["TripAnswers"];

    [GeneratedRegex(@"^(?:public|internal) (?:static |sealed |abstract |readonly |partial )*(?:class|record struct|record|struct|enum|interface) (\w+)", RegexOptions.Multiline)]
    private static partial Regex TypeLine();

    /// <summary>American spellings that would stand in a public name; libraries we call have their own.</summary>
    [Theory, InlineData("Vapor"), InlineData("Color"), InlineData("Center"), InlineData("Meter"), InlineData("Liter"), InlineData("Fiber"), InlineData("Mold"), InlineData("Gray"), InlineData("Aluminum")]
    public void Public_names_are_spelt_in_the_British_way(string american)
    {
        const BindingFlags all = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        Ground.NothingOffends(
            from type in Physics.ExportedTypes
            from name in type.GetMembers(all).Select(member => member.Name).Append(type.Name)
            where Words().Matches(name).Any(word => word.Value == american || word.Value == american + "s")
            select $"{type.FullName}: {name}");
    }

    [GeneratedRegex("[A-Z][a-z]*")]
    private static partial Regex Words();
}
