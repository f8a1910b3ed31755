using Thermal.Envelope.Details;

namespace Thermal.Bridges;

/// <summary>Solves described details in the build-up they stand in.</summary>
public static class DetailSolver
{
    /// <summary>ψ, coldest point and U with ribs of a detail along a line.</summary>
    /// <param name="detail">The detail.</param>
    /// <param name="place">Where it stands.</param>
    /// <param name="cache">Sections solved before; null starts an empty one.</param>
    /// <param name="accuracy">How closely; null for the standard's one per cent.</param>
    /// <exception cref="ArgumentException">It does not fit: see <see cref="DetailFit"/>.</exception>
    public static SolvedLine Solve(LineDetail detail, DetailPlace place, BridgeCache? cache = null, Accuracy? accuracy = null) => throw new NotImplementedException();

    /// <summary>χ and coldest point of a detail at a point.</summary>
    /// <inheritdoc cref="Solve(LineDetail, DetailPlace, BridgeCache?, Accuracy?)"/>
    public static SolvedPoint Solve(PointDetail detail, DetailPlace place, BridgeCache? cache = null, Accuracy? accuracy = null) => throw new NotImplementedException();
}
