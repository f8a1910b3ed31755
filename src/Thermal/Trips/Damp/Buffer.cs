using Thermal.Air;
using Thermal.Envelope;
using Thermal.Materials;
using Thermal.Trips.Heat;

namespace Thermal.Trips.Damp;

/// <summary>Wood, wool or cloth near the room that takes up water from its air and gives it back: one store behind a film and half its depth.</summary>
/// <remarks>
/// Effective depth for a daily swing d = √(D·24 h/π), with D = δ0/μ · p_sat/(ρ·du/dφ), no more than there is; the store is as wet as air of its
/// humidity, u = u80/0.8·φ. With that depth and half of it as resistance the store answers a daily swing exactly as a thick slab does, in size
/// and in time (a store of C and a resistance of d/2 give the slab's √(iω·c·k)); slower and faster swings only roughly. Straight through the
/// origin, without hysteresis; over water also below 0 °C; heat of sorption left out. Source: OURS, by the method of effective penetration depth (from memory).
/// </remarks>
internal sealed class Buffer
{
    /// <summary>Temperature at which depth and permeability are found, °C. Source: OURS, between night and day.</summary>
    internal const double FoundAtC = 15;
    /// <summary>Furnishings, J/(K·m² floor), to which the textiles below belong; with more or less of them there is more or less cloth. Source: OURS, the usual figure.</summary>
    internal const double UsualFurnishingsJPerM2K = 25_000;
    /// <summary>Bedding, clothes, cushions and curtains in a living space, kg per m² of floor. Source: OURS.</summary>
    internal const double LivingTextilesKgPerM2 = 5;
    /// <summary>Seats and carpets in a cab, kg per m² of floor. Source: OURS.</summary>
    internal const double CabTextilesKgPerM2 = 2;
    /// <summary>Density of folded cloth and bedding, kg/m³. Source: PRACTICE, from memory.</summary>
    internal const double TextileKgPerM3 = 100;
    /// <summary>Vapour resistance factor of cloth and bedding. Source: PRACTICE, 1.5 to 3, from memory.</summary>
    internal const double TextileResistanceFactor = 2;
    /// <summary>Water taken up by cloth at 80 % humidity, kg per kg dry. Source: PRACTICE, cotton 0.10, wool 0.17, polyester below 0.01, from memory.</summary>
    internal const double TextileSorptionAt80Fraction = 0.1;
    /// <summary>Humidity the sorption of materials is stated at, fraction.</summary>
    internal const double StatedAtFraction = 0.8;
    private const double DayS = 86_400;

    private double startFraction, stepFraction, fromFraction, heldKgPerS, exchangeKgPerS, saturatedKgPerKg;

    /// <param name="room">Room whose air reaches it, index.</param>
    /// <param name="part">Part whose face it is; -1 for textiles.</param>
    /// <param name="areaM2">Faces, m².</param>
    /// <param name="thicknessM">Thickness there is behind each m², m.</param>
    /// <param name="densityKgPerM3">Density, kg/m³.</param>
    /// <param name="sorptionAt80Fraction">Water taken up at 80 %, kg per kg dry.</param>
    /// <param name="resistanceFactor">Vapour resistance factor μ.</param>
    /// <param name="airPressurePa">Air pressure, Pa.</param>
    internal Buffer(int room, int part, double areaM2, double thicknessM, double densityKgPerM3, double sorptionAt80Fraction, double resistanceFactor, double airPressurePa)
    {
        (Room, Part, AreaM2) = (room, part, areaM2);
        double perM3Kg = densityKgPerM3 * sorptionAt80Fraction / StatedAtFraction, through = Diffusion.PermeabilityKgPerMSPa(FoundAtC, airPressurePa) / resistanceFactor;
        DepthM = Math.Min(thicknessM, Math.Sqrt(through * SaturationPressure.OverWaterPa(FoundAtC) / perM3Kg * DayS / Math.PI));
        CapacityKg = perM3Kg * DepthM * areaM2;
        InsideKgPerS = through / (DepthM / 2) * areaM2 * airPressurePa / MoistAir.MolarMassRatio;
    }

    internal int Room { get; }
    internal int Part { get; }
    internal double AreaM2 { get; }
    /// <summary>Depth that takes part, m.</summary>
    internal double DepthM { get; }
    /// <summary>Water held at 100 %, kg.</summary>
    internal double CapacityKg { get; }
    /// <summary>From its face to the middle of that depth, per unit of humidity ratio, kg/s.</summary>
    internal double InsideKgPerS { get; }
    /// <summary>Humidity it is in balance with, fraction.</summary>
    internal double HumidityFraction { get; private set; }
    /// <summary>More water than at the start, kg.</summary>
    internal double GainKg => CapacityKg * (HumidityFraction - startFraction);

    /// <summary>All of a body: the innermost layer of linings and door leaves with its battens, and the textiles of each room.</summary>
    internal static IEnumerable<Buffer> Of(Body body, double airPressurePa)
    {
        for (int p = 0; p < body.Parts.Length; p++)
        {
            Part part = body.Parts[p];
            if (part.Layers?.Layers[0] is not SolidLayer lining) continue;
            double battens = lining.Battens?.AreaFraction ?? 0;
            if (OfMaterial(lining.Material, 1 - battens) is { } found) yield return found;
            if (lining.Battens is { } strips && OfMaterial(strips.Material, battens) is { } also) yield return also;

            Buffer? OfMaterial(Material material, double share) => material is { SorptionAt80Fraction: { Value: > 0 } sorption, VapourResistanceFactor: { } factor }
                ? new(part.Zone, p, share * part.AreaM2, lining.ThicknessM, material.DensityKgPerM3.Value, sorption.Value, factor.Value, airPressurePa)
                : null;
        }
        for (int z = 0; z < body.Rooms.Length; z++)
        {
            double perM2 = body.Vehicle.FurnishingsJPerM2K / UsualFurnishingsJPerM2K * body.Vehicle.Zones[z].Kind switch { ZoneKind.Living => LivingTextilesKgPerM2, ZoneKind.Cab => CabTextilesKgPerM2, _ => 0 };
            if (perM2 > 0)
                yield return new(z, -1, body.Rooms[z].FurnishingM2, perM2 / Body.FurnishingFaceFactor / TextileKgPerM3, TextileKgPerM3, TextileSorptionAt80Fraction, TextileResistanceFactor, airPressurePa);
        }
    }

    /// <summary>In balance with air of a humidity ratio, at most saturated.</summary>
    internal void Start(double ratioKgPerKg, double atC, double airPressurePa) =>
        startFraction = HumidityFraction = Math.Min(1, ratioKgPerKg / MoistAir.HumidityRatioUncheckedKgPerKg(SaturationPressure.OverWaterUncheckedPa(atC), airPressurePa));

    /// <summary>Puts it into the balance of its room, itself eliminated.</summary>
    internal void Enter(int stage, double stageS, double filmKgPerS, double atC, double airPressurePa, RatioSystem rooms)
    {
        if (stage == 0) stepFraction = HumidityFraction;
        fromFraction = stepFraction + HeatStepper.DrawnOut * (HumidityFraction - stepFraction) * stage;
        saturatedKgPerKg = MoistAir.HumidityRatioUncheckedKgPerKg(SaturationPressure.OverWaterUncheckedPa(atC), airPressurePa);
        double carryKgPerS = filmKgPerS * InsideKgPerS / (filmKgPerS + InsideKgPerS);
        heldKgPerS = CapacityKg / stageS;
        exchangeKgPerS = carryKgPerS * heldKgPerS / (heldKgPerS + carryKgPerS * saturatedKgPerKg);
        rooms.Exchange(Room, exchangeKgPerS, saturatedKgPerKg * fromFraction);
    }

    /// <summary>Takes what the solved room gives it.</summary>
    internal void Take(double ratioKgPerKg) => HumidityFraction = fromFraction + exchangeKgPerS * (ratioKgPerKg - saturatedKgPerKg * fromFraction) / heldKgPerS;
}
