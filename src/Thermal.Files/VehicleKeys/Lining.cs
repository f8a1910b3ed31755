using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Thermal.Envelope;
using Thermal.Files.Keys;
using Thermal.Files.Yaml;
using Thermal.Materials;
using YamlDotNet.RepresentationModel;

namespace Thermal.Files.VehicleKeys;

/// <summary>How a lining is closed, and the air that passes it.</summary>
/// <param name="Fit">The word.</param>
/// <param name="AirM3PerM2H">Air behind it, m³ per m² and hour.</param>
internal sealed record Lining(LiningFit Fit, Bounded AirM3PerM2H)
{
    /// <summary>A lining with the air that its word stands for.</summary>
    internal static Lining Usual(LiningFit fit) => new(fit, LiningDefaults.AirBehindM3PerM2H(fit));
}

/// <summary>A lining given by its air alone.</summary>
internal sealed class StatedLiningNode : Node<Lining>
{
    private static readonly SpanNode Air = Kinds.Span(Kinds.AirThrough(20));

    internal override bool TryRead(Spot spot, [MaybeNullWhen(false)] out Lining value)
    {
        value = Air.TryRead(spot, out Bounded? air) ? new(LiningFit.Stated, air) : null;
        return value is not null;
    }

    internal override YamlNode Write(Lining value) => Air.Write(value.AirM3PerM2H);

    internal override JsonObject Schema() => Air.Schema();
}
