using System.Collections;
using System.Globalization;
using System.Reflection;

namespace Thermal.Files.Tests.Vehicles;

/// <summary>Every property of a value down to its numbers as text, so that two vehicles can be compared to the last bit without trusting the writer.</summary>
/// <remarks>Losses are left out: they follow from what is compared, and a description that was not solved has none.</remarks>
internal static class Described
{
    internal static string Of(object? value)
    {
        List<string> lines = [];
        Describe("", value, lines);
        return string.Join('\n', lines);
    }

    private static void Describe(string path, object? value, List<string> lines)
    {
        switch (value)
        {
            case null or string or bool or Enum or int:
                lines.Add($"{path} = {value ?? "null"}");
                break;
            case double number:
                lines.Add($"{path} = {number.ToString("R", CultureInfo.InvariantCulture)}");
                break;
            case DateTime moment:
                lines.Add($"{path} = {moment.ToString("O", CultureInfo.InvariantCulture)}");
                break;
            case IEnumerable list:
                int i = 0;
                foreach (object item in list)
                    Describe($"{path}[{i++}]", item, lines);
                lines.Add($"{path}.Count = {i}");
                break;
            default:
                lines.Add($"{path} : {value.GetType().Name}");
                foreach (PropertyInfo property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(property => property.GetIndexParameters().Length == 0 && property.Name is not ("EqualityContract" or "LossWPerK" or "EdgeLossWPerK")))
                    Describe($"{path}.{property.Name}", property.GetValue(value), lines);
                break;
        }
    }
}
