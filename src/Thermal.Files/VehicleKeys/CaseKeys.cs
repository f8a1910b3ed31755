using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Files.Keys;
using Thermal.Files.Yaml;
using Thermal.Materials;
using Thermal.People;
using Thermal.Power;
using Thermal.Ventilation;
using Thermal.Water;
using Thermal.Words.Units;

namespace Thermal.Files.VehicleKeys;

/// <summary>The whole vehicle file: the one table that reads it, writes it and describes it to editors.</summary>
internal static class CaseKeys
{
    private static readonly Bounded UsualWind = new(0.3, 0.45, 0.6, "OURS", "wind pressure across a parked vehicle, 0.3 to 0.6"); // as Vehicle has it
    private static readonly Bounded UnknownPaint = new(0.2, 0.4, 0.9, "OURS", "paint of unknown colour, taken as light"); // as Vehicle has it
    private static readonly Charging NoCharging = new(0, 0, []);

    private static readonly Field<Case, int> Format = new("format", "Version of this format.", new WholeNode(1, 1), _ => 1) { IsRequired = true };
    private static readonly Field<Case, string> Name = new("name", "Name of the vehicle.", Kinds.Name, one => one.Vehicle.Name) { IsRequired = true };
    private static readonly Field<Case, string> Description = new("description", "One or two sentences of what it is.", Kinds.Sentence, one => one.Vehicle.Description.Length == 0 ? null : one.Vehicle.Description) { Default = "" };
    private static readonly Field<Case, Site> Site = new("site", "Where it stands and how cold it gets.", SiteKeys.Map, one => new Site(one.Place, one.ColdNight, one.MildNight)) { IsRequired = true };
    private static readonly Field<Case, Habits> People = new("people", "Who lives in it and what they do.", HabitKeys.Map, one => one.Habits) { IsRequired = true };
    private static readonly Field<Case, FittedHeater> Heater = new("heater", "The heater fitted or planned.", EquipmentKeys.Heater, one => new FittedHeater(one.Heater, one.HeaterOnFreshAir, one.WarmUpH)) { IsRequired = true };
    private static readonly Field<Case, Battery> BatteryField = new("battery", "The battery.", PowerKeys.BatteryMap, one => one.Power?.Battery);
    private static readonly Field<Case, Charging> ChargingField = new("charging", "What charges the battery.", PowerKeys.ChargingMap, one => one.Power is { } power && (power.AlternatorA > 0 || power.ShoreChargerA > 0 || power.Panels.Count > 0) ? new Charging(power.AlternatorA, power.ShoreChargerA, power.Panels) : null) { Default = NoCharging };
    private static readonly Field<Case, IReadOnlyList<Load>> Loads = new("loads", "What draws from the battery beside heater, fans and pads.", PowerKeys.Loads, one => Kinds.UnlessEmpty(one.Power?.Loads ?? [])) { Default = [] };
    private static readonly Field<Case, RoofFan> Fan = new("roof_fan", "A fan in the roof that draws air out; a trip says when it runs.", EquipmentKeys.Fan, one => one.Fan);
    private static readonly Field<Case, IReadOnlyList<Tank>> Tanks = new("tanks", "Water tanks.", WaterKeys.Tanks, one => Kinds.UnlessEmpty(one.Tanks)) { Default = [] };
    private static readonly Field<Case, IReadOnlyList<Pipe>> Pipes = new("pipes", "Pipes with standing water.", WaterKeys.Pipes, one => Kinds.UnlessEmpty(one.Pipes)) { Default = [] };
    private static readonly Field<Case, Bounded> Paint = new("paint", "How light the paint is: white, light, middle or dark; or the share of the sun that it takes up. When left out: taken as light, with a wide span.", EquipmentKeys.Paint, one => one.Vehicle.PaintSunFraction) { Default = UnknownPaint };
    private static readonly Field<Case, BodySize> Body = new("body", "Bare dimensions of the living space, skin to skin; panels of the living space without a size take theirs from it.", BodyKeys.Map, BodyOf);
    private static readonly Field<Case, IReadOnlyList<Material>> Materials = new("materials", "Materials of your own.", new ListOf<Material>("material", MaterialKeys.Map, 0, 100, material => material.Key), one => Kinds.UnlessEmpty(one.OwnMaterials)) { Default = [] };
    private static readonly Field<Case, IReadOnlyList<Zone>> Zones = new("zones", "Rooms with air of their own: one living space, perhaps a cab and a hold.", ZoneKeys.List, one => one.Vehicle.Zones) { IsRequired = true };
    private static readonly Field<Case, IReadOnlyList<ZoneLink>> Passages = new("passages", "Passages between rooms.", PassageKeys.List, one => Kinds.UnlessEmpty(one.Vehicle.Links)) { Default = [] };
    private static readonly Field<Case, double> Furnishings = new("furnishings", "Heat stored by furniture and stores, per floor area.", new QuantityNode(Dimensions.CapacityPerArea, "J/(m²·K)", 0, 500_000, "kJ/(m²·K)"), one => one.Vehicle.FurnishingsJPerM2K) { Default = 25_000 };
    private static readonly Field<Case, Bounded> Wind = new("wind_pressure", "Difference of wind pressure between the two sides, as a factor of the dynamic pressure.", Kinds.Span(Kinds.Number(0, 2)), one => one.Vehicle.WindPressureFactor) { Default = UsualWind };
    private static readonly Field<Case, IReadOnlyList<Surface>> Surfaces = new("surfaces", "Panels: roof, floor, sides, ends, cab, partitions.", SurfaceKeys.List, one => one.Vehicle.Surfaces) { IsRequired = true };

    internal static Map<Case> Map { get; } = new("a vehicle file",
        [Format, Name, Description, Site, People, Heater, BatteryField, ChargingField, Loads, Fan, Tanks, Pipes, Paint, Body, Materials, Zones, Passages, Furnishings, Wind, Surfaces], Build);

    private static Case? Build(Values<Case> values)
    {
        int livingCount = values.Of(Zones)!.Count(zone => zone.Kind == ZoneKind.Living);
        if (livingCount != 1)
            values.Problem(Zones, $"{livingCount} rooms are of kind living; exactly one must be");
        foreach (Zone zone in values.Of(Zones)!.Where(zone => values.Of(Surfaces)!.All(surface => surface.Zone != zone.Name && surface.OtherZone != zone.Name)))
            values.Problem(Zones, $"no panel belongs to the zone {zone.Name}; add its panels or remove the zone");
        CheckEquipment(values);
        values.Spot.Scope.CheckReferences();
        DetailCheck.Corners(values.SpotOf(Surfaces), values.Of(Surfaces)!);
        return values.Spot.Scope.ProblemCount > 0 || WithVolume(values) is not { } zones ? null : new Case
        {
            Vehicle = VehicleOf(values, zones),
            Habits = values.Of(People)!,
            Heater = values.Of(Heater)!.Class,
            HeaterOnFreshAir = values.Of(Heater)!.IsOnFreshAir,
            WarmUpH = values.Of(Heater)!.WarmUpH,
            Power = PowerOf(values),
            Fan = values.Of(Fan),
            Tanks = values.Of(Tanks)!,
            Pipes = values.Of(Pipes)!,
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
        PaintSunFraction = values.Of(Paint)!,
    };

    private static BoardPower? PowerOf(Values<Case> values) => values.Of(BatteryField) is not { } battery ? null : new()
    {
        Battery = battery,
        Panels = values.Of(ChargingField)!.Panels,
        AlternatorA = values.Of(ChargingField)!.AlternatorA,
        ShoreChargerA = values.Of(ChargingField)!.ShoreA,
        Loads = values.Of(Loads)!,
    };

    private static void CheckEquipment(Values<Case> values)
    {
        foreach (Field<Case> field in new Field<Case>[] { ChargingField, Loads }.Where(field => values.Has(field) && !values.Has(BatteryField)))
            values.Problem(field, $"{field.Key} needs a battery; write battery with its usable capacity, or take {field.Key} away");
        string? living = values.Of(Zones)!.FirstOrDefault(zone => zone.Kind == ZoneKind.Living)?.Name;
        IReadOnlyList<Tank> tanks = values.Of(Tanks)!;
        for (int i = 0; i < tanks.Count; i++)
            if (tanks[i].WarmAirM3PerH > 0 && tanks[i].Zone == living)
                values.SpotOf(Tanks).At(i, tanks[i].Name).At("warm_air").Problem("the tank stands in the warm room already; take warm_air away, or zone where it stands outside it");
    }

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
