using Thermal.Envelope.Details;

namespace Thermal.Words.Sentences;

/// <summary>What a described detail is called in a sentence.</summary>
public static class DetailNames
{
    /// <summary>A detail, such as "hat rib" or "bolt".</summary>
    public static string Of(Detail detail) => detail switch
    {
        Rib rib => Of(rib.Shape),
        Batten => "batten",
        Corrugation => "corrugation",
        Corner => "corner",
        FrameEdge => "frame edge",
        DoorEdge => "door edge",
        Bolt => "bolt",
        _ => throw new ArgumentOutOfRangeException(nameof(detail), detail, "There is no word for this detail."),
    };

    /// <summary>The section of a rib.</summary>
    public static string Of(RibShape shape) => shape switch
    {
        RibShape.Hat => "hat rib",
        RibShape.Zed => "Z rib",
        RibShape.Channel => "C rib",
        RibShape.Box => "box rib",
        RibShape.Plate => "plate rib",
        _ => throw new ArgumentOutOfRangeException(nameof(shape), shape, "There is no word for this shape."),
    };
}
