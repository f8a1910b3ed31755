using System.Text;
using CsCheck;
using Thermal.Assessments;

namespace Thermal.Files.Tests.Vehicles;

/// <summary>However a built-in file is damaged, it is refused, or read and then written as the same vehicle: never an exception, never both.</summary>
public sealed class DamageTests
{
    private static readonly string[] Pieces =
    [
        "", " ", "\n", "\n  ", ":", ": ", "- ", "{", "}", "[", "]", ",", "#", "\"", "'", "|", ">", "&a ", "*a", "!!str ", "%", "@", "`", "~", "null", "true", "\t", "---", "...", "<<: ",
        "0", "-1", "1e9", "1e-9", "NaN", ".inf", "1_000", "010", "1,5", "40", "40 mm", "40 m", "100 %", "101 %", "-300 °C", "1e308 W", "5 W/mK", "air_gap", "steel_sheet", "living", "hold", "air", "road",
        "format: 1", "name: x", "count: 50", "thickness: 1 m", "area: 0.01 m²", "volume: 0.1 m³", "hat", "corner", "hollow", "true", "floor", "shape: plate", "depth: 300 mm", "psi: 1 W/(m·K)", "with: roof", "\u2028", "\uFEFF", "\uD800", "é", "−", "²",
    ];

    private static readonly Gen<Damage> AnyDamage = Gen.Select(Gen.Int[0, 5], Gen.Int[0, 1_000_000], Gen.Int[0, 1_000_000], Gen.Int[0, Pieces.Length - 1], (kind, at, other, piece) => new Damage(kind, at, other, Pieces[piece]));

    private static readonly string[] Texts = [.. VehicleLibrary.Names.Select(name => VehicleLibrary.Text(name)!), DetailVan.Text];

    [Fact]
    public void A_damaged_file_is_read_and_written_the_same_or_refused_and_never_both() => Gen.Select(Gen.Int[0, Texts.Length - 1], AnyDamage.Array[1, 3]).Sample((index, damages) =>
    {
        string text = damages.Aggregate(Texts[index], (damaged, damage) => damage.Of(damaged));
        Reading<Case> reading = VehicleFile.Read(text, "van.yaml");
        return reading.Value is null == reading.Problems.Count > 0
            && reading.Problems.All(problem => problem.Line > 0 && problem.Column > 0 && problem.Where.Length > 0 && problem.What.Length > 0)
            && (reading.Value is null || Described.Of(VehicleFile.Read(VehicleFile.Write(reading.Value), "again").Value) == Described.Of(reading.Value));
    }, iter: 4000);

    [Fact]
    public void Any_bytes_are_read_or_refused() => Gen.Byte.Array[0, 400].Sample(bytes => VehicleFile.Read(bytes, "van.yaml").Problems.Count > 0, iter: 3000);

    [Fact]
    public void A_damaged_file_in_bytes_is_read_or_refused() => Gen.Select(Gen.Int[0, 1_000_000], Gen.Byte).Sample((at, value) =>
    {
        byte[] bytes = Encoding.UTF8.GetBytes(VehicleLibrary.Text("weekend-van")!);
        bytes[at % bytes.Length] = value;
        Reading<Case> reading = VehicleFile.Read(bytes, "van.yaml");
        return reading.Value is null == reading.Problems.Count > 0;
    }, iter: 500);

    /// <summary>One thing done to a text.</summary>
    private sealed record Damage(int Kind, int At, int Other, string Piece)
    {
        internal string Of(string text)
        {
            string[] lines = text.Split('\n');
            int at = At % (text.Length + 1), line = At % lines.Length, length = Math.Min(Other % 12, text.Length - at);
            return Kind switch
            {
                0 => text[..at] + Piece + text[(at + length)..],
                1 => string.Join('\n', lines.Where((_, i) => i != line)),
                2 => string.Join('\n', [.. lines[..line], lines[Other % lines.Length], .. lines[line..]]),
                3 => WithLine(lines, line, lines[line].IndexOf(": ", StringComparison.Ordinal) is >= 0 and var colon ? lines[line][..(colon + 2)] + Piece : lines[line]),
                4 => WithLine(lines, line, "  " + lines[line]),
                _ => WithLine(lines, line, lines[line][Math.Min(2, lines[line].Length)..]),
            };
        }

        private static string WithLine(string[] lines, int line, string words) => string.Join('\n', [.. lines[..line], words, .. lines[(line + 1)..]]);
    }
}
