using System.Globalization;
using System.Text;
using Thermal.Climates;
using Thermal.Files;
using Thermal.Files.Weathers;

namespace Thermal.Benchmarks;

/// <summary>A year of hours: generated with the sun on six surfaces, and read from text as long as an agency's.</summary>
internal sealed class HourlyYear
{
    // What else stands in a row of the agency's file is not read, but must be passed over.
    private const string Rest = ",0,1,0,0,1,0,0,1,0,9,E,9,9,E,9,320,E,9,-9900,?,0,990,E,9,0.4,E,8,0.051,F,8,0.240,F,8,-9900,-9900,?,0,0,0,1,0,1,0,0,1,0,0,1,0,0,1,0,20,1,250,E,9,16100,A,7,0.240,F,8";
    private readonly Place _place = PlaceLibrary.BuiltIn.Find("Davos")!;
    private readonly SurfaceAspect[] _six = [new(0, 0), new(180, 0), new(90, 20), new(90, 110), new(90, 200), new(90, 290)];

    internal HourlyYear() => Text = TextOf(GeneratedWeather.Typical(_place));

    /// <summary>A typical year in the TMY3 layout, 1.8 MB.</summary>
    internal string Text { get; }

    /// <summary>Reads it.</summary>
    internal void Read()
    {
        if (WeatherFile.Read(Text, "year.csv").Value is null) throw new InvalidOperationException("The year of the benchmark has problems.");
    }

    /// <summary>Generates a year and finds what falls on roof, floor and four sides; returns the sum, so that none can be left out.</summary>
    internal double Generate()
    {
        Weather year = GeneratedWeather.Typical(_place);
        double sum = 0;
        for (int i = 0; i < year.Count; i++)
        {
            DateTime middle = year.MiddleUtc(i);
            SunPosition sun = SunPosition.At(year.LatitudeDeg, year.LongitudeDeg, middle);
            double above = SunAboveAir.NormalWPerM2(middle.DayOfYear);
            foreach (SurfaceAspect surface in _six)
                sum += surface.Of(sun, year.BeamNormalWPerM2![i], year.DiffuseWPerM2![i], year.GlobalWPerM2![i], above, SurfaceAspect.BareGroundFraction, SkyModel.HayDavies).TotalWPerM2;
        }
        return sum;
    }

    private static string TextOf(Weather year)
    {
        StringBuilder text = new();
        text.Append(CultureInfo.InvariantCulture, $"1,\"{year.Name}\",XX,{year.UtcOffsetH},{year.LatitudeDeg},{year.LongitudeDeg},{year.AltitudeM}\n")
            .Append("Date (MM/DD/YYYY),Time (HH:MM),GHI (W/m^2),DNI (W/m^2),DHI (W/m^2),Dry-bulb (C),RHum (%),Pressure (mbar),Wspd (m/s)").Append(string.Concat(Enumerable.Range(1, Rest.Split(',').Length - 1).Select(i => $",source {i}"))).Append('\n');
        for (int i = 0; i < year.Count; i++)
        {
            DateTime day = year.MiddleLocal(i);
            double humidity = 100 * year.VapourPa[i] / Air.SaturationPressure.OverWaterPa(year.AirC[i]);
            text.Append(CultureInfo.InvariantCulture, $"{day:MM'/'dd'/'yyyy},{day.Hour + 1:00}:00,{year.GlobalWPerM2![i]:0},{year.BeamNormalWPerM2![i]:0},{year.DiffuseWPerM2![i]:0},{year.AirC[i]:0.0},{humidity:0},845,{year.WindMPerS[i]:0.0}{Rest}\n");
        }
        return text.ToString();
    }
}
