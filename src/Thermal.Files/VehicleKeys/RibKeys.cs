using Thermal.Envelope;
using Thermal.Envelope.Details;
using Thermal.Files.Keys;
using Thermal.Materials;
using Thermal.Words.Sentences;
using Thermal.Words.Units;

namespace Thermal.Files.VehicleKeys;

/// <summary>Ribs, battens, grooves and corners: described by their shape, or with a given ψ and the build-up it was found for.</summary>
internal static class RibKeys
{
    private static readonly Field<LinearBridge, string> Name = new("name", "What you call it.", Kinds.Name, rib => rib.Name) { IsRequired = true };
    private static readonly Field<LinearBridge, Bounded> Psi = new("psi", "In place of shape: its linear thermal transmittance from elsewhere, found with the loss films and bare dimensions.", Kinds.Span(new QuantityNode(Dimensions.LinearTransmittance, "W/(m·K)", -1, 5)), rib => Given(rib)?.PsiWPerMK);
    private static readonly Field<LinearBridge, double> Length = new("length", "Total length in this panel, all of them together.", Kinds.Metres(0, 500), rib => rib.LengthM) { IsRequired = true };
    private static readonly Field<LinearBridge, double> Spacing = new("spacing", "Distance from middle to middle of neighbours, where they repeat.", Kinds.Millimetres(0.02, 20, "500 mm"), rib => rib.SpacingM);
    private static readonly Field<LinearBridge, double> Coldest = new("coldest_factor", "Only beside psi: temperature factor of the coldest inner point, 0 as cold as outside, 1 as warm as the room.", Kinds.Factor, rib => Given(rib)?.ColdestFactor);
    private static readonly Field<LinearBridge, double> Mould = new("mould_factor", "Only beside psi: the same with the inside films for mould; that of coldest_factor where left out.", Kinds.Factor, rib => Given(rib)?.MouldFactor);
    private static readonly Field<LinearBridge, string> For = new("given_for", "Only beside psi: " + char.ToLowerInvariant(BuildUpNode.Words[0]) + BuildUpNode.Words[1..], new BuildUpNode(), rib => Given(rib)?.GivenFor);

    private static readonly Told<LinearBridge> Told = new("a rib", Psi, For, [Coldest, Mould], RibShapes.Shape, $"shape ({RibShapes.WordList}) with its numbers", RibShapes.Fields);

    private static readonly Map<LinearBridge> Map = new("a rib", [Name, RibShapes.Shape, .. RibShapes.Fields, Psi, Length, Spacing, Coldest, Mould, For], Build);

    /// <summary>A rib without a vehicle: its shape and numbers alone.</summary>
    internal static Map<LinearBridge> Alone { get; } = new("a rib", [RibShapes.Shape, .. RibShapes.Fields], BuildAlone);

    internal static ListOf<LinearBridge> List { get; } = new("rib", Map, 0, 50, rib => rib.Name);

    private static LinearBridge? Build(Values<LinearBridge> values)
    {
        if (Told.IsDescribed(values) is not { } isDescribed)
            return null;
        LineDetail? detail = isDescribed ? RibShapes.Read(values) : null;
        return isDescribed && detail is null ? null : new LinearBridge
        {
            Name = values.Of(Name),
            Detail = detail,
            PsiWPerMK = values.Of(Psi),
            LengthM = values.Of(Length),
            SpacingM = values.NumberOf(Spacing),
            ColdestFactor = values.NumberOf(Coldest),
            MouldFactor = values.NumberOf(Mould),
            GivenFor = values.Of(For),
        };
    }

    private static LinearBridge? BuildAlone(Values<LinearBridge> values)
    {
        if (!values.Has(RibShapes.Shape))
            values.Spot.Problem($"shape is missing; write one of {RibShapes.WordList}");
        else if (RibShapes.Read(values) is { } detail)
            return new LinearBridge { Name = DetailNames.Of(detail), Detail = detail, LengthM = 1 };
        return null;
    }

    // What was computed for a described rib is not written: it would go stale.
    private static LinearBridge? Given(LinearBridge rib) => rib.Detail is null ? rib : null;
}
