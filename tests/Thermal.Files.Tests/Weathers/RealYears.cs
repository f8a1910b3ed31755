using System.Globalization;
using System.Runtime.CompilerServices;
using System.Text;
using Thermal.Climates;
using Thermal.Files.Weathers;

namespace Thermal.Files.Tests.Weathers;

/// <summary>The four real years, where the folder of samples lies beside the project or above it; tests that need them are skipped with a word where it does not.</summary>
internal static class RealYears
{
    internal const string SandPoint = "Sand Point", Colorado = "North-west Colorado", Italy = "North-west Italy", Sodankyla = "Sodankylä";

    private static readonly string? Folder = Found();
    private static readonly Dictionary<string, WeatherReading> Known = [];

    /// <summary>The text of a sample, or the test is skipped.</summary>
    internal static string Text(string file)
    {
        Assert.SkipWhen(Folder is null, "Skipped: there is no shared/climate-samples beside the project or above it.");
        return File.ReadAllText(Path.Combine(Folder!, file));
    }

    internal static WeatherReading Of(string name)
    {
        lock (Known)
        {
            if (Known.TryGetValue(name, out WeatherReading? known)) return known;
            Reading<WeatherReading> reading = WeatherFile.Read(name switch
            {
                SandPoint => Text("sand-point-ak-tmy3.csv"),
                Italy => Text("pvgis-tmy-45n-8e.csv"),
                Colorado => ColoradoInOwnColumns(),
                _ => SodankylaInOwnColumns(),
            }, name);
            Assert.Empty(reading.Problems);
            return Known[name] = reading.Value!;
        }
    }

    /// <summary>The only year with measured longwave radiation, read as if it had none: its sky is computed.</summary>
    internal static Weather SodankylaWithComputedSky()
    {
        string[] lines = SodankylaInOwnColumns().Split('\n');
        Reading<WeatherReading> reading = WeatherFile.Read(string.Join('\n', lines.Select(line => line.StartsWith('#') ? line : line[(line.IndexOf(',', StringComparison.Ordinal) + 1)..])), "computed");
        Assert.Empty(reading.Problems);
        return reading.Value!.Weather;
    }

    /// <summary>Stamps in the middle of the hour, local standard time; months of different years are put into one.</summary>
    private static string ColoradoInOwnColumns()
    {
        string[] lines = Text("nw-colorado-nsrdb-tmy.csv").Split('\n', StringSplitOptions.RemoveEmptyEntries), names = lines[0].Split(',');
        string[] wanted = ["Month", "Day", "Hour", "Minute", "Temperature", "Relative Humidity", "Wind Speed", "GHI", "DNI", "DHI", "Pressure"];
        int[] at = [.. wanted.Select(name => Array.IndexOf(names, name))];
        StringBuilder text = new("# name: North-west Colorado\n# latitude_deg: 40.5137\n# longitude_deg: -108.5449\n# altitude_m: 2000\n# utc_offset_h: -7\n# stamp: middle\n# kind: typical\n# source: NREL National Solar Radiation Database\n# licence: CC BY 3.0 US\n");
        text.Append("time,air_c,relative_humidity_percent,wind_m_s,global_w_m2,beam_normal_w_m2,diffuse_w_m2,pressure_pa\n");
        foreach (string line in lines.Skip(1))
        {
            string[] cells = line.Split(',');
            string Cell(int column) => cells[at[column]];
            text.Append(CultureInfo.InvariantCulture, $"2025-{int.Parse(Cell(0), CultureInfo.InvariantCulture):00}-{int.Parse(Cell(1), CultureInfo.InvariantCulture):00}T{int.Parse(Cell(2), CultureInfo.InvariantCulture):00}:{Cell(3)},")
                .Append(string.Join(',', Enumerable.Range(4, 6).Select(Cell))).Append(CultureInfo.InvariantCulture, $",{100 * double.Parse(Cell(10), CultureInfo.InvariantCulture)}\n");
        }
        return text.ToString();
    }

    /// <summary>Universal time, hours named by their ends: so the light has its middle nearest to noon.</summary>
    private static string SodankylaInOwnColumns()
    {
        StringBuilder text = new("# name: Sodankylä\n# latitude_deg: 67.37\n# longitude_deg: 26.63\n# altitude_m: 179\n# utc_offset_h: 0\n# stamp: end\n# kind: real\n# source: Essery and others (2016), doi 10.5194/gi-5-219-2016\n");
        text.Append("longwave_w_m2,global_w_m2,pressure_pa,time,wind_m_s,relative_humidity_percent,air_c\n");
        foreach (string line in Text("sodankyla-2013-14.txt").Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            string[] cells = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            int[] date = [.. cells.Take(4).Select(cell => int.Parse(cell, CultureInfo.InvariantCulture))];
            DateTime end = new DateTime(date[0], date[1], date[2]).AddHours(date[3]);
            text.Append(CultureInfo.InvariantCulture, $"{cells[5]},{cells[4]},{cells[11].Trim()},{end:yyyy-MM-ddTHH:mm},{cells[10]},{cells[9]},{double.Parse(cells[8], CultureInfo.InvariantCulture) - 273.15:0.00}\n");
        }
        return text.ToString();
    }

    private static string? Found([CallerFilePath] string here = "")
    {
        for (DirectoryInfo? folder = new FileInfo(here).Directory; folder is not null; folder = folder.Parent)
        {
            string samples = Path.Combine(folder.FullName, "shared", "climate-samples");
            if (Directory.Exists(samples)) return samples;
        }
        return null;
    }
}
