using Thermal.Assessments;
using Thermal.Climates;
using Thermal.Envelope;
using Thermal.Materials;
using Thermal.Zones;

namespace Thermal.Words.Sentences;

/// <summary>What a choice of the model is called in a sentence: never its name in the code.</summary>
public static class Names
{
    /// <summary>Kind of loss.</summary>
    public static string Of(LossKind kind) => kind switch
    {
        LossKind.Panel => "panel",
        LossKind.Opening => "window or door",
        LossKind.Bridge => "ribs and edges",
        LossKind.Air => "air exchange",
        _ => throw Unknown(kind),
    };

    /// <summary>Kind of inner surface.</summary>
    public static string Of(SurfaceKind kind) => kind switch
    {
        SurfaceKind.Bare => "lining",
        SurfaceKind.Behind => "behind furniture",
        SurfaceKind.Glass => "glass",
        SurfaceKind.Leaf => "door leaf",
        SurfaceKind.Frame => "frame",
        SurfaceKind.Bridge => "rib or bolt",
        SurfaceKind.BehindLining => "behind the lining",
        _ => throw Unknown(kind),
    };

    /// <summary>A build-up's verdict in a word or two.</summary>
    public static string Of(DampVerdict verdict) => verdict switch
    {
        DampVerdict.Dry => "dry",
        DampVerdict.WetDries => "wet, dries again",
        DampVerdict.StaysWet => "stays wet",
        DampVerdict.WetNightOnly => "wet on the cold night",
        _ => throw Unknown(verdict),
    };

    /// <summary>A fuel.</summary>
    public static string Of(Fuel fuel) => fuel switch
    {
        Fuel.Diesel => "diesel",
        Fuel.Petrol => "petrol",
        Fuel.Propane => "propane",
        Fuel.Butane => "butane",
        Fuel.Ethanol => "spirit",
        Fuel.Electricity => "electricity",
        _ => throw Unknown(fuel),
    };

    /// <summary>How a design temperature is known.</summary>
    public static string Of(DesignKind kind) => kind switch
    {
        DesignKind.Published => "published for this station",
        DesignKind.Computed => "computed from readings of this station",
        DesignKind.Estimated => "estimated from monthly means",
        DesignKind.Stated => "stated in the vehicle file",
        _ => throw Unknown(kind),
    };

    /// <summary>What a design temperature measures.</summary>
    public static string Of(DesignMeasure measure) => measure switch
    {
        DesignMeasure.AsNoted => "as its note says",
        DesignMeasure.HoursAt996 => "exceeded by 99.6 % of all hours",
        DesignMeasure.HoursAt99 => "exceeded by 99 % of all hours",
        DesignMeasure.TwoDayMean => "lowest two-day mean",
        DesignMeasure.YearlyLowest => "mean of the yearly lowest",
        _ => throw Unknown(measure),
    };

    /// <summary>What lies outside a panel.</summary>
    public static string Of(OuterSide side) => side switch
    {
        OuterSide.Air => "open air",
        OuterSide.Road => "sheltered side over the road",
        OuterSide.OtherZone => "another room",
        _ => throw Unknown(side),
    };

    /// <summary>How the lining is closed.</summary>
    public static string Of(LiningFit fit) => fit switch
    {
        LiningFit.Bonded => "bonded or sprayed: no air gets behind",
        LiningFit.Taped => "boards cut and taped",
        LiningFit.Loose => "loose fill behind a close lining",
        LiningFit.Slatted => "slats or gaps",
        LiningFit.Stated => "a figure of the vehicle file",
        _ => throw Unknown(fit),
    };

    /// <summary>Which way heat leaves.</summary>
    public static string Of(FlowDirection direction) => direction switch
    {
        FlowDirection.Up => "upward",
        FlowDirection.Horizontal => "sideways",
        FlowDirection.Down => "downward",
        _ => throw Unknown(direction),
    };

    private static ArgumentOutOfRangeException Unknown<T>(T value) where T : struct, Enum =>
        new(nameof(value), value, "There is no word for this value.");
}
