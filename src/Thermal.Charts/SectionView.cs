using SkiaSharp;

namespace Thermal.Charts;

/// <summary>Where a section stands on the sheet: the same scale in both directions, turned to its attitude, cropped to what matters.</summary>
/// <param name="Attitude">How it stands in the vehicle.</param>
/// <param name="Box">Where it is drawn, px.</param>
/// <param name="PxPerM">Scale.</param>
/// <param name="FromXM">Lowest x drawn, m.</param>
/// <param name="FromYM">Lowest y drawn, outside, m.</param>
/// <param name="IsFlipped">True where the lowest x stands at the right or below: an edge has its wall where the names are.</param>
internal sealed record SectionView(Attitude Attitude, SKRect Box, double PxPerM, double FromXM, double FromYM, bool IsFlipped)
{
    internal bool IsLying => Attitude is Attitude.Roof or Attitude.Floor;

    /// <summary>Highest x drawn, m.</summary>
    internal double ToXM => FromXM + (IsLying ? Box.Width : Box.Height) / PxPerM;

    /// <summary>The x drawn furthest right or lowest, m.</summary>
    internal double FarXM => IsFlipped ? FromXM : ToXM;

    /// <summary>The way from the outside into the room, one px long.</summary>
    internal SKPoint Inwards => Attitude switch
    {
        Attitude.Roof => new SKPoint(0, 1),
        Attitude.Floor => new SKPoint(0, -1),
        Attitude.OutsideLeft => new SKPoint(1, 0),
        _ => new SKPoint(-1, 0),
    };

    internal SKPoint At(double xM, double yM)
    {
        float along = (float)((IsFlipped ? ToXM - xM : xM - FromXM) * PxPerM), deep = (float)((yM - FromYM) * PxPerM);
        return Attitude switch
        {
            Attitude.Roof => new SKPoint(Box.Left + along, Box.Top + deep),
            Attitude.Floor => new SKPoint(Box.Left + along, Box.Bottom - deep),
            Attitude.OutsideLeft => new SKPoint(Box.Left + deep, Box.Top + along),
            _ => new SKPoint(Box.Right - deep, Box.Top + along),
        };
    }
}
