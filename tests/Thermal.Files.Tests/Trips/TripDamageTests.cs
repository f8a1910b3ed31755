using CsCheck;
using Thermal.Files.Tests.Vehicles;

namespace Thermal.Files.Tests.Trips;

/// <summary>However a trip file is damaged, it is refused, or read and then written as the same trip: never an exception, never both.</summary>
public sealed class TripDamageTests
{
    private static readonly string[] Pieces =
    [
        "", " ", "\n", "\n  ", ":", ": ", "- ", "{", "}", "[", "]", ",", "#", "\"", "null", "\t", "0", "-1", "1e9", "NaN", "1,5", "40", "40 h", "99 days", "101 %", "-300 °C", "22:30", "24:00", "7:00",
        "2026-02-07", "1950-01-01 00:00", "2099-12-31 23:59", "9999-12-31", "off", "unknown", "north", "true", "cold_spell: true", "place: Davos", "steady: {temperature: -5 °C}", "driving: 20 m/s", "fan: above_humidity",
        "people: 0", "lasts: 1 h", "lasts: 366 days", "from: 2026-02-07", "weather: x.csv", "place: a.csv", "\u2028", "\uFEFF", "\uD800", "é", "−",
    ];

    private static readonly Gen<(int Kind, int At, int Other, string Piece)> AnyDamage =
        Gen.Select(Gen.Int[0, 3], Gen.Int[0, 1_000_000], Gen.Int[0, 1_000_000], Gen.Int[0, Pieces.Length - 1], (kind, at, other, piece) => (kind, at, other, Pieces[piece]));

    // The steady trip: making hours of a place for each of thousands of texts would take minutes. Others are tried less often.
    [Fact]
    public void A_damaged_trip_is_read_and_written_the_same_or_refused_and_never_both() => AnyDamage.Array[1, 3].Sample(damages => Survives(TripLibrary.Text("cold-chamber")!, damages), iter: 3000);

    [Fact]
    public void A_damaged_trip_with_places_is_read_and_written_the_same_or_refused() => AnyDamage.Array[1, 3].Sample(damages => Survives(TripLibrary.Text("ski-week")!, damages), iter: 60);

    [Fact]
    public void Any_bytes_are_read_or_refused() => Gen.Byte.Array[0, 400].Sample(bytes => TripFile.Read(bytes, "trip.yaml").Problems.Count > 0, iter: 2000);

    private static bool Survives(string text, (int Kind, int At, int Other, string Piece)[] damages)
    {
        Reading<TripRequest> reading = TripFile.Read(damages.Aggregate(text, Damaged), "trip.yaml");
        return reading.Value is null == reading.Problems.Count > 0
            && reading.Problems.All(problem => problem.Line > 0 && problem.Column > 0 && problem.Where.Length > 0 && problem.What.Length > 0)
            && (reading.Value is null || Said(TripFile.Read(TripFile.Write(reading.Value), "again").Value) == Said(reading.Value));
    }

    // Without the hours of the weather, which follow from where it comes from.
    private static string? Said(TripRequest? one) => one is null ? null
        : Described.Of(one with { Trip = one.Trip with { Legs = [.. one.Trip.Legs.Select(leg => leg with { Weather = leg.Weather with { AirC = [], VapourPa = [], WindMPerS = [], GlobalWPerM2 = null, BeamNormalWPerM2 = null, DiffuseWPerM2 = null, SkyC = null } })] } });

    private static string Damaged(string text, (int Kind, int At, int Other, string Piece) damage)
    {
        string[] lines = text.Split('\n');
        int at = damage.At % (text.Length + 1), line = damage.At % lines.Length, length = Math.Min(damage.Other % 12, text.Length - at);
        return damage.Kind switch
        {
            0 => text[..at] + damage.Piece + text[(at + length)..],
            1 => string.Join('\n', lines.Where((_, i) => i != line)),
            2 => string.Join('\n', [.. lines[..line], lines[damage.Other % lines.Length], .. lines[line..]]),
            _ => string.Join('\n', [.. lines[..line], lines[line].IndexOf(": ", StringComparison.Ordinal) is >= 0 and var colon ? lines[line][..(colon + 2)] + damage.Piece : lines[line], .. lines[(line + 1)..]]),
        };
    }
}
