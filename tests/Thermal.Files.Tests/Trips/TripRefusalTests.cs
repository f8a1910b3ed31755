using Thermal.Climates;
using Thermal.Files.Weathers;

namespace Thermal.Files.Tests.Trips;

/// <summary>Nonsense in a trip is refused by name, at its line and column, with what to write instead.</summary>
public sealed class TripRefusalTests
{
    private const string Good = """
        format: 1
        name: two nights
        vehicle: library-van
        start: 2026-02-07 16:00
        start_charge: 80 %
        habits:
          people: 2
          bedtime: 22:30
          rising: 7:00
          day: 20 °C
        legs:
          - name: car park
            until: 2026-02-08 10:00
            place: Davos
            heading: south
          - name: road
            from: 2026-02-08 10:00
            lasts: 4 h
            place: Zürich
            driving: 80 km/h
          - name: camp site
            lasts: 1 days
            place: Davos
            shore: 2000 W
            habits: {night: off, meals_at: [8:00, 19:30]}
        """;

    [Fact]
    public void The_trip_without_a_fault_is_read() => Assert.Empty(TripFile.Read(Good, "trip.yaml").Problems);

    /// <summary>What is replaced in a good file, by what, and what the problem must say: where, then what.</summary>
    [Theory]
    [InlineData("start_charge: 80 %", "start_charge: -10 %", "start_charge", "-10 % is negative")]
    [InlineData("start_charge: 80 %", "start_charge: 110 %", "start_charge", "110 % is outside 0 % to 100 %")]
    [InlineData("from: 2026-02-08 10:00", "from: 2026-02-08 09:00", "road / from", "overlaps: car park ends at 2026-02-08 10:00")]
    [InlineData("from: 2026-02-08 10:00", "from: 2026-02-08 11:00", "road / from", "leaves a gap: car park ends at 2026-02-08 10:00")]
    [InlineData("until: 2026-02-08 10:00", "until: 2026-02-07 16:00", "car park / until", "not after its begin: the trip begins at 2026-02-07 16:00")]
    [InlineData("until: 2026-02-08 10:00", "until: 2028-02-08 10:00", "car park / until", "a leg lasts at most 366 days")]
    [InlineData("until: 2026-02-08 10:00", "until: 2026-02-30 10:00", "car park / until", "is no date; write year, month, day and time")]
    [InlineData("until: 2026-02-08 10:00", "until: 8.2.2026", "car park / until", "is no date")]
    [InlineData("until: 2026-02-08 10:00", "until: 1926-02-08", "car park / until", "lies outside the years 1950 to 2099")]
    [InlineData("until: 2026-02-08 10:00", "until: ", "car park / until", "nothing is written here")]
    [InlineData("    until: 2026-02-08 10:00\n", "", "car park", "until or lasts is missing")]
    [InlineData("lasts: 4 h", "lasts: 4 h\n    until: 2026-02-08 14:00", "road / lasts", "until and lasts stand here; write only one of until or lasts")]
    [InlineData("lasts: 4 h", "lasts: 4", "road / lasts", "4 has no unit")]
    [InlineData("lasts: 4 h", "lasts: 400 days", "road / lasts", "is outside")]
    [InlineData("lasts: 4 h", "lasts: 0 h", "road / lasts", "0 h is zero")]
    [InlineData("    place: Zürich\n", "", "road", "place or weather or steady is missing")]
    [InlineData("place: Zürich", "place: Zurch", "road / place", "did you mean Zürich?")]
    [InlineData("place: Zürich", "place: Zürich\n    steady: {temperature: 6 °C}", "road / steady", "place and steady stand here")]
    [InlineData("place: Zürich", "weather: hours.csv", "road / weather", "files can be named only in a trip that is a file itself")]
    [InlineData("place: Zürich", "place: mine.csv", "road / place", "files can be named only in a trip that is a file itself")]
    [InlineData("place: Zürich", "steady: {humidity: 50 %}", "road / steady", "temperature is missing")]
    [InlineData("place: Zürich", "steady: {temperature: 6 °C}\n    cold_spell: true", "road / cold_spell", "cold_spell belongs to place")]
    [InlineData("place: Zürich", "steady: {temperature: 6 °C}\n    seed: 3", "road / seed", "seed belongs to place")]
    [InlineData("place: Zürich", "place: Zürich\n    cold_spell: true\n    seed: 3", "road / seed", "the same for every seed")]
    [InlineData("lasts: 1 days\n    place: Davos", "lasts: 40 days\n    place: Davos\n    cold_spell: true", "camp site / cold_spell", "write at most 30 days")]
    [InlineData("driving: 80 km/h", "driving: 80 km/h\n    shore: 1000 W", "road / shore", "there is no shore power on the road")]
    [InlineData("driving: 80 km/h", "driving: 800 km/h", "road / driving", "is outside 3.6 km/h to 144 km/h")]
    [InlineData("driving: 80 km/h", "driving: 80", "road / driving", "80 has no unit")]
    [InlineData("driving: 80 km/h", "speed: 80 km/h", "road / speed", "a leg has no such key")]
    [InlineData("heading: south", "heading: suoth", "car park / heading", "did you mean south?")]
    [InlineData("heading: south", "heading: 400°", "car park / heading", "is outside 0° to 360°")]
    [InlineData("shore: 2000 W", "shore: 20 kW", "camp site / shore", "is outside")]
    [InlineData("night: off", "night: cold", "camp site / habits / night", "\"cold\" is not known here")]
    [InlineData("night: off", "night: 45 °C", "camp site / habits / night", "is outside 0 °C to 30 °C")]
    [InlineData("night: off", "fan_above: 60 %", "camp site / habits / fan_above", "fan_above belongs to fan: above_humidity")]
    [InlineData("meals_at: [8:00, 19:30]", "meals_at: [8:00, 19:60]", "camp site / habits / time 2", "\"19:60\" is no time of day")]
    [InlineData("meals_at: [8:00, 19:30]", "meals_at: 8:00", "camp site / habits / meals_at", "a list of times belongs here")]
    [InlineData("bedtime: 22:30", "bedtime: 22.30", "habits / bedtime", "write hours and minutes from 0:00 to 24:00, such as 22:30")]
    [InlineData("bedtime: 22:30", "bedtime: 25:00", "habits / bedtime", "is no time of day")]
    [InlineData("bedtime: 22:30", "bedtime: 7:00", "habits / rising", "bedtime and rising are the same")]
    [InlineData("people: 2", "people: -2", "habits / people", "-2 is outside 0 to 12")]
    [InlineData("people: 2", "peple: 2", "habits / peple", "did you mean people?")]
    [InlineData("  people: 2\n", "", "habits", "people is missing")]
    [InlineData("day: 20 °C", "covers: night", "habits / covers", "did you mean nights?")]
    [InlineData("vehicle: library-van", "vehicle: libary-van", "vehicle", "did you mean library-van?")]
    [InlineData("vehicle: library-van", "vehicle: my/van.yaml", "vehicle", "files can be named only in a trip that is a file itself")]
    [InlineData("vehicle: library-van", "step: 20 min", "step", "is outside 1 min to 15 min")]
    [InlineData("vehicle: library-van", "start_temperature: 60 °C", "start_temperature", "is outside -40 °C to 40 °C")]
    [InlineData("vehicle: library-van", "start_water: -2 °C", "start_water", "is negative; write a value from 0 °C to 40 °C")]
    [InlineData("vehicle: library-van", "step: 7,5 min", "step", "write 7.5 min")]
    [InlineData("format: 1", "format: 2", "format", "2 is outside 1 to 1")]
    [InlineData("start: 2026-02-07 16:00\n", "", "file", "start is missing")]
    [InlineData("name: camp site", "name: road", "road", "the name road stands twice")]
    public void A_fault_is_named_where_it_stands_with_what_to_write_instead(string old, string bad, string where, string what)
    {
        int at = Good.IndexOf(old, StringComparison.Ordinal);
        Assert.True(at >= 0, old);
        Reading<TripRequest> reading = TripFile.Read(Good[..at] + bad + Good[(at + old.Length)..], "trip.yaml");
        Assert.Null(reading.Value);
        Problem problem = Assert.Single(reading.Problems, problem => problem.Where == where && problem.What.Contains(what, StringComparison.Ordinal));
        int line = Good[..at].Count(letter => letter == '\n') + 1;
        Assert.InRange(problem.Line, line - 7, line + bad.Count(letter => letter == '\n') + 7); // at the fault, or at the map that holds it
    }

    [Fact]
    public void The_fault_stands_at_its_own_line_and_column()
    {
        Problem problem = Assert.Single(TripFile.Read(Good.Replace("heading: south", "heading: suoth", StringComparison.Ordinal), "trip.yaml").Problems);
        Assert.Equal(("trip.yaml", 15, 14), (problem.File, problem.Line, problem.Column));
    }

    [Fact]
    public void All_problems_are_told_at_once_in_the_order_of_their_lines()
    {
        string text = Good.Replace("80 %", "-10 %", StringComparison.Ordinal).Replace("people: 2", "people: 200", StringComparison.Ordinal)
            .Replace("place: Zürich", "place: Zurch", StringComparison.Ordinal).Replace("night: off", "nihgt: off", StringComparison.Ordinal);
        IReadOnlyList<Problem> problems = TripFile.Read(text, "trip.yaml").Problems;
        Assert.Equal(["start_charge", "habits / people", "road / place", "camp site / habits / nihgt"], problems.Select(problem => problem.Where));
        Assert.Equal([5, 7, 19, 25], problems.Select(problem => problem.Line));
    }

    [Fact]
    public void Every_leg_with_unknown_weather_is_named() => Assert.Equal(["car park / place", "road / place", "camp site / place"],
        TripFile.Read(Good.Replace("place: ", "place: Nowhere near ", StringComparison.Ordinal), "trip.yaml").Problems.Select(problem => problem.Where));

    [Fact]
    public void Files_are_looked_for_from_the_folder_of_the_trip_and_their_faults_are_named_at_the_leg()
    {
        string folder = Directory.CreateTempSubdirectory().FullName;
        try
        {
            Weather hours = GeneratedWeather.Typical(PlaceLibrary.BuiltIn.Find("Davos")!, 1, 2026);
            File.WriteAllText(Path.Combine(folder, "hours.csv"), WeatherFile.Write(hours));
            File.WriteAllText(Path.Combine(folder, "few.csv"), WeatherFile.Write(GeneratedWeather.ColdSpell(PlaceLibrary.BuiltIn.Find("Davos")!, 3, 2026)));
            File.WriteAllText(Path.Combine(folder, "bad.csv"), "# name: bad\n");
            string path = Path.Combine(folder, "trip.yaml");

            Reading<TripRequest> good = Open("weather: hours.csv");
            Assert.Empty(good.Problems);
            Assert.Equal(hours.Count, good.Value!.Trip.Legs[1].Weather.Count);
            Assert.Equal("road / weather: the weather lasts from 2026-01-15 00:00 to 2026-01-18 00:00 and the leg from 2026-02-08 10:00 to 2026-02-08 14:00; change the dates or name another file", Told("weather: few.csv"));
            Assert.Contains("bad.csv has ", Told("weather: bad.csv"));
            Assert.Contains("road / place: there is no file", Told("place: mine.csv"));

            Reading<TripRequest> Open(string air)
            {
                File.WriteAllText(path, Good.Replace("place: Zürich", air, StringComparison.Ordinal));
                return TripFile.Open(path);
            }

            string Told(string air)
            {
                Problem problem = Assert.Single(Open(air).Problems);
                return $"{problem.Where}: {problem.What}";
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>A place that has only monthly means gives no hours.</summary>
    [Fact]
    public void A_place_without_daily_lowest_and_highest_is_named()
    {
        string folder = Directory.CreateTempSubdirectory().FullName;
        try
        {
            File.WriteAllText(Path.Combine(folder, "flat.csv"), "# name: Flatland\n# country: Switzerland\n# latitude_deg: 46\n# longitude_deg: 8\n# altitude_m: 500\n# source: a test\n# period: none\n# licence: none\n# design_temperature_c: -12\n# design_kind: computed\n# design_measure: two_day\n# design_note: none\nmonth,mean_c,relative_humidity_percent\n"
                + string.Concat(Enumerable.Range(1, 12).Select(month => $"{month},5,80\n")));
            string path = Path.Combine(folder, "trip.yaml");
            File.WriteAllText(path, Good.Replace("place: Zürich", "place: flat.csv", StringComparison.Ordinal));
            Problem problem = Assert.Single(TripFile.Open(path).Problems);
            Assert.Equal("road / place", problem.Where);
            Assert.Contains("has no mean daily lowest and highest temperatures", problem.What);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData("legs")]
    [InlineData("- 1")]
    [InlineData("{")]
    [InlineData("\0")]
    public void Text_that_is_no_trip_is_refused(string text) => Assert.NotEmpty(TripFile.Read(text, "trip.yaml").Problems);

    [Fact]
    public void A_file_that_is_missing_is_named() => Assert.Equal("there is no such file", Assert.Single(TripFile.Open("nowhere/trip.yaml").Problems).What);
}
