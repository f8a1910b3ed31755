using Thermal.Assessments;
using Thermal.Bridges;
using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Materials;

namespace Thermal.Charts;

/// <summary>A solved detail on one night, as its section is drawn.</summary>
public sealed record SectionOnNight
{
    // So finely that no kink of a line shows at the usual size, yet drawn in an instant. Source: OURS.
    private static readonly Accuracy Smooth = new(FlowFraction: 0.0001, TemperatureK: 0.002, LargestCellCount: 2_500);

    /// <summary>What the builder calls it.</summary>
    public required string Name { get; init; }
    /// <summary>The panel it stands in.</summary>
    public required string Panel { get; init; }
    /// <summary>How that panel stands in the vehicle.</summary>
    public required Attitude Attitude { get; init; }
    /// <summary>Its solution; a plane or a round section.</summary>
    public required SolvedDetail Solved { get; init; }
    /// <summary>The field that is drawn: its section with the loss films, by itself as finely as it was solved for its figures.</summary>
    public SolvedSection Field { get => field ?? Solved.Loss; init; }
    /// <summary>How the other panel of a corner stands; null elsewhere.</summary>
    public Attitude? OtherAttitude { get; init; }
    /// <summary>Temperature of the room, °C.</summary>
    public required double InsideC { get; init; }
    /// <summary>Temperature outside as it acts on the panel, °C.</summary>
    public required double OutsideC { get; init; }
    /// <summary>Dew point of the room's air, °C.</summary>
    public required double DewPointC { get; init; }
    /// <summary>What stands inside, such as room.</summary>
    public required string InsideName { get; init; }
    /// <summary>What stands outside, such as sky and air.</summary>
    public required string OutsideName { get; init; }

    /// <summary>The section of a bridge on the cold night.</summary>
    /// <param name="assessment">The assessment.</param>
    /// <param name="bridge">One of its bridges.</param>
    /// <returns>The section, solved again more finely to be drawn; null where ψ or χ was given and nothing was solved.</returns>
    /// <exception cref="InvalidOperationException">The bridge's panel is not in the assessment.</exception>
    public static SectionOnNight? Of(Assessment assessment, BridgeAnswer bridge) =>
        AsSolved(assessment, bridge) is { } night ? night with { Field = Conduction.Solve(night.Solved.Loss.Section, Smooth) } : null;

    /// <summary>The same with the field that its figures were found in.</summary>
    internal static SectionOnNight? AsSolved(Assessment assessment, BridgeAnswer bridge)
    {
        if (bridge.Solved is null)
            return null;
        Surface surface = assessment.Case.Vehicle.Surfaces.First(s => s.Name == bridge.Panel);
        return new SectionOnNight
        {
            Name = bridge.Name,
            Panel = bridge.Panel,
            Attitude = CutOfAssessment.AttitudeOf(surface),
            Solved = bridge.Solved,
            OtherAttitude = bridge.Solved.Detail is Corner corner ? CutOfAssessment.AttitudeOf(assessment.Case.Vehicle.Surfaces.First(s => s.Name == corner.Other)) : null,
            InsideC = bridge.InsideC,
            OutsideC = bridge.OutsideC,
            DewPointC = bridge.DewPointC,
            InsideName = surface.Zone == assessment.Case.Vehicle.Living.Name ? "room" : surface.Zone,
            OutsideName = surface.Outside == OuterSide.OtherZone ? surface.OtherZone! : CutOfAssessment.OutsideOf(surface),
        };
    }

    /// <summary>Its inner point nearest to the outside's temperature with the loss films, °C: the coldest, unless it is warmer outside than inside.</summary>
    public double ColdestC => OutsideC + Solved.ColdestFactor * (InsideC - OutsideC);

    /// <summary>True where a side stands on a floor: the corner is below.</summary>
    internal bool IsCornerBelow => Attitude is Attitude.OutsideLeft or Attitude.OutsideRight && OtherAttitude == Attitude.Floor;

    /// <summary>What that point is.</summary>
    internal string ColdestName => InsideC >= OutsideC ? "coldest" : "warmest";

    /// <summary>True where only the half right of a line of symmetry is solved.</summary>
    internal bool IsHalf => Solved.Detail is Batten or Corrugation or Bolt or Rib { Shape: RibShape.Hat or RibShape.Box or RibShape.Plate };

    /// <summary>Temperatures of the section's environments in their order, °C.</summary>
    internal IReadOnlyList<double> TemperaturesC =>
        [.. Solved.Loss.Environments.Select(environment => environment == DetailSection.Room ? InsideC : OutsideC)];

    /// <summary>What kind of material a piece is of: that of its layer or of the detail; by its conductivity where it is neither.</summary>
    internal MaterialGroup GroupOf(Piece piece)
    {
        // Between the best conductor that is no metal and the poorest metal. Source: OURS.
        const double metalFromWPerMK = 5;
        IEnumerable<StackLayer> layers = Solved.Place.Stack.Layers.Concat(Solved.Place.OtherStack?.Layers ?? []);
        if (piece.ConductivityWPerMK >= metalFromWPerMK)
            return MaterialGroup.Metal;
        if (layers.OfType<SolidLayer>().FirstOrDefault(layer => layer.Name == piece.Name) is { } found)
            return found.Material.Group;
        return Solved.Detail switch
        {
            Rib { Filling: { } filling } when filling.Name == piece.Name => filling.Group,
            Rib { Over: { } over } when over.Material.Name == piece.Name => over.Material.Group,
            Batten batten when batten.Material.Name == piece.Name => batten.Material.Group,
            Batten { Over: { } over } when over.Material.Name == piece.Name => over.Material.Group,
            _ => MaterialGroup.Fluid,
        };
    }
}
