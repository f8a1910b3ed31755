using Thermal.Envelope.Details;

namespace Thermal.Bridges;

/// <summary>Bolts, rivets and screws with round heads or washers, about their axis x = 0.</summary>
/// <remarks>A head that shows stands on the lining; one with layers over it is let into what lies under them. Outer heads are as thick as inner ones.</remarks>
internal static class BoltSection
{
    internal static DrawnDetail Draw(Bolt bolt, DetailPlace place, double insideFilmM2KPerW)
    {
        WallColumn wall = WallColumn.Of(place, insideFilmM2KPerW);
        double face = wall.FaceUnderM(bolt.LayersOver), head = bolt.HeadThicknessM;
        (double low, double high) = bolt.LayersOver == 0 ? (face, face + head) : (face - head, face);
        double radiusM = Math.Max(bolt.HeadM, bolt.OuterHeadM ?? 0) / 2 + wall.ReachM;
        List<Piece> pieces = [.. wall.Pieces(0, radiusM), Part(bolt.DiameterM, 0, face)];
        if (head > 0) pieces.Add(Part(bolt.HeadM, low, high));
        if (head > 0 && bolt.OuterHeadM is { } outer) pieces.Add(Part(outer, -head, 0));
        return new(new("bolt", SectionShape.Round, pieces, wall.Air(radiusM, wall.ThicknessM)), 1, wall.UWPerM2K * Math.PI * radiusM * radiusM, wall.UWPerM2K);

        Piece Part(double diameterM, double y0M, double y1M) =>
            new(bolt.Material.Name, new(0, diameterM / 2, y0M, y1M), bolt.Material.ConductivityWPerMK.Value) { IsInset = y1M > 0 && y0M < wall.ThicknessM };
    }
}
