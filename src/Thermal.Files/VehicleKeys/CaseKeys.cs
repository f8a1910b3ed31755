using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Files.Keys;
using Thermal.Files.Yaml;
using Thermal.Materials;
using Thermal.People;
using Thermal.Power;
using Thermal.Water;
using Thermal.Words.Units;

namespace Thermal.Files.VehicleKeys;

/// <summary>The whole vehicle file: the one table that reads it, writes it and describes it to editors.</summary>
internal static class CaseKeys
{
    private static readonly Bounded UsualWind = new(0.3, 0.45, 0.6, "OURS", "wind pressure across a parked vehicle, 0.3 to 0.6"); // as Vehicle has it

    private static readonly Field<Case, int> Format = new("format", "Version of this format.", new WholeNode(1, 1), _ => 1) { IsRequired = true };
    private static readonly Field<Case, string> Name = new("name", "Name of the vehicle.", Kinds.Name, one => one.Vehicle.Name) { IsRequired = true };
    private static readonly Field<Case, string> Description = new("description", "One or two sentences of what it is.", Kinds.Sentence, one => one.Vehicle.Description.Length == 0 ? null : one.Vehicle.Description) { Default = "" };
    private static readonly Field<Case, Site> Site = new("site", "Where it stands and how cold it gets.", SiteKeys.Map, one => new Site(one.Place, one.ColdNight, one.MildNight)) { IsRequired = true };
    private static readonly Field<Case, Habits> People = new("people", "Who lives in it and what they do.", HabitKeys.Map, one => one.Habits) { IsRequired = true };
    private static readonly Field<Case, FittedHeater> Heater = new("heater", "The heater fitted or planned.", EquipmentKeys.Heater, one => new FittedHeater(one.Heater, one.HeaterOnFreshAir, one.WarmUpH)) { IsRequired = true };
    private static readonly Field<Case, Battery> BatteryField = new("battery", "The battery.", EquipmentKeys.BatteryMap, one => one.Power?.Battery);
    private static readonly Field<Case, IReadOnlyList<Tank>> Tanks = new("tanks", "Water tanks.", EquipmentKeys.Tanks, one => Kinds.UnlessEmpty(one.Tanks)) { Default = [] };
    private static readonly Field<Case, BodySize> Body = new("body", "Bare dimensions of the living space, skin to skin; panels of the living space without a size take theirs from it.", BodyKeys.Map, BodyOf);
    private static readonly Field<Case, IReadOnlyList<Material>> Materials = new("materials", "Materials of your own.", new ListOf<Material>("material", MaterialKeys.Map, 0, 100, material => material.Key), one => Kinds.UnlessEmpty(one.OwnMaterials)) { Default = [] };
    private static readonly Field<Case, IReadOnlyList<Zone>> Zones = new("zones", "Rooms with air of their own: one living space, perhaps a cab and a hold.", ZoneKeys.List, one => one.Vehicle.Zones) { IsRequired = true };
    private static readonly Field<Case, IReadOnlyList<ZoneLink>> Passages = new("passages", "Passages between rooms.", PassageKeys.List, one => Kinds.UnlessEmpty(one.Vehicle.Links)) { Default = [] };
    private static readonly Field<Case, double> Furnishings = new("furnishings", "Heat stored by furniture and stores, per floor area.", new QuantityNode(Dimensions.CapacityPerArea, "J/(m²·K)", 0, 500_000, "kJ/(m²·K)"), one => one.Vehicle.FurnishingsJPerM2K) { Default = 25_000 };
    private static readonly Field<Case, Bounded> Wind = new("wind_pressure", "Difference of wind pressure between the two sides, as a factor of the dynamic pressure.", Kinds.Span(Kinds.Number(0, 2)), one => one.Vehicle.WindPressureFactor) { Default = UsualWind };
    private static readonly Field<Case, IReadOnlyList<Surface>> Surfaces = new("surfaces", "Panels: roof, floor, sides, ends, cab, partitions.", SurfaceKeys.List, one => one.Vehicle.Surfaces) { IsRequired = true };

    internal static Map<Case> Map { get; } = new("a vehicle file",
        [Format, Name, Description, Site, People, Heater, BatteryField, Tanks, Body, Materials, Zones, Passages, Furnishings, Wind, Surfaces], Build);

    private static Case? Build(Values<Case> values)
    {
        int livingCount = values.Of(Zones)!.Count(zone => zone.Kind == ZoneKind.Living);
        if (livingCount != 1)
            values.Problem(Zones, $"{livingCount} rooms are of kind living; exactly one must be");
        foreach (Zone zone in values.Of(Zones)!.Where(zone => values.Of(Surfaces)!.All(surface => surface.Zone != zone.Name && surface.OtherZone != zone.Name)))
            values.Problem(Zones, $"no panel belongs to the zone {zone.Name}; add its panels or remove the zone");
        values.Spot.Scope.CheckReferences();
        DetailCheck.Corners(values.SpotOf(Surfaces), values.Of(Surfaces)!);
        return values.Spot.Scope.ProblemCount > 0 || WithVolume(values) is not { } zones ? null : new Case
        {
            Vehicle = VehicleOf(values, zones),
            Habits = values.Of(People)!,
            Heater = values.Of(Heater)!.Class,
            HeaterOnFreshAir = values.Of(Heater)!.IsOnFreshAir,
            WarmUpH = values.Of(Heater)!.WarmUpH,
            Power = values.Of(BatteryField) is { } battery ? new BoardPower { Battery = battery } : null,
            Tanks = values.Of(Tanks)!,
            Place = values.Of(Site)!.Place,
            ColdNight = values.Of(Site)!.ColdNight,
            MildNight = values.Of(Site)!.MildNight,
            OwnMaterials = values.Of(Materials)!,
        };
    }

    private static Vehicle VehicleOf(Values<Case> values, IReadOnlyList<Zone> zones) => new()
    {
        Name = values.Of(Name)!,
        Description = values.Of(Description)!,
        LengthM = values.Of(Body)?.LengthM,
        WidthM = values.Of(Body)?.WidthM,
        HeightM = values.Of(Body)?.HeightM,
        Zones = zones,
        Links = values.Of(Passages)!,
        Surfaces = values.Of(Surfaces)!,
        FurnishingsJPerM2K = values.Of(Furnishings),
        WindPressureFactor = values.Of(Wind)!,
    };

    // The air in the finished inside can be found only when the build-ups are known.
    private static IReadOnlyList<Zone>? WithVolume(Values<Case> values)
    {
        IReadOnlyList<Zone> zones = values.Of(Zones)!;
        if (values.Spot.Scope.VolumeFromBody is not { } name || values.Of(Body) is not { } body)
            return zones;
        double volumeM3 = body.FinishedM3(values.Of(Surfaces)!, name);
        if (volumeM3 is >= 0.1 and <= 200)
            return [.. zones.Select(zone => zone.Name == name ? zone with { VolumeM3 = volumeM3 } : zone)];
        values.Problem(Body, "the build-ups leave no room inside; check the body's size and the thickness of the layers");
        return null;
    }

    private static BodySize? BodyOf(Case one) =>
        one.Vehicle is { LengthM: { } lengthM, WidthM: { } widthM, HeightM: { } heightM } ? new BodySize(lengthM, widthM, heightM, 0) : null;
}
