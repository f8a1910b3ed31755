using Thermal.Charts;
using Thermal.Trips;
using Thermal.Words;

namespace Thermal.Reports;

/// <summary>The pictures of a trip.</summary>
public static class TripPictures
{
    /// <summary>In the order in which they are read; that of tanks only where there are any.</summary>
    /// <param name="found">The trip.</param>
    /// <param name="figures">Metric or US.</param>
    /// <param name="widthPx">Width, px, 320 or more.</param>
    public static IReadOnlyList<Figure> Of(TripResult found, Figures figures, int widthPx = 640)
    {
        List<Figure> pictures =
        [
            new("trip-temperatures", TripTemperatures.Draw(found, Palette.Light, figures.Set, widthPx)),
            new("trip-damp", TripWater.Draw(found, Palette.Light, figures.Set, widthPx)),
            new("trip-energy", TripEnergyPicture.Draw(found, Palette.Light, figures.Set, widthPx)),
        ];
        if (found.Tanks.Count > 0) pictures.Add(new("trip-tanks", TripTanks.Draw(found, Palette.Light, figures.Set, widthPx)));
        pictures.Add(new("trip-water", TripWaterBook.Draw(found, Palette.Light, figures.Set, widthPx)));
        return pictures;
    }
}
