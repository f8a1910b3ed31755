using Thermal.Climates;

namespace Thermal.Tests.Exact;

/// <summary>Sun, sky and tilted faces where the answer follows from geometry.</summary>
public sealed class SunExactTests
{
    private static readonly SunPosition Up30South = new(30, 180, 0, 0, 0);

    private static SunOnSurface On(SurfaceAspect aspect, SunPosition sun, SkyModel model = SkyModel.HayDavies, double beam = 600, double diffuse = 100, double ground = 0.2) =>
        aspect.Of(sun, beam, diffuse, beam * Math.Max(0, Math.Sin(sun.ElevationDeg * Math.PI / 180)) + diffuse, 1367, ground, model);

    // 1e-9: rounding. Hay and Davies move light between sky and beam; on the flat the sum is global light whatever the share.
    [Theory, InlineData(SkyModel.Isotropic), InlineData(SkyModel.HayDavies)]
    public void The_flat_receives_the_global_light(SkyModel model) => Assert.Equal(400, On(new(0, 0), Up30South, model).TotalWPerM2, 1e-9);

    [Fact]
    public void An_upright_face_to_the_sun_receives_the_cosine_half_the_sky_and_half_of_what_the_ground_throws_back()
    {
        SunOnSurface found = On(new(90, 180), Up30South, SkyModel.Isotropic);
        Assert.Equal(600 * Math.Sqrt(3) / 2, found.BeamWPerM2, 1e-9);
        Assert.Equal(50, found.SkyWPerM2, 1e-9);
        Assert.Equal(400 * 0.2 / 2, found.GroundWPerM2, 1e-9);
    }

    [Fact]
    public void Hay_and_Davies_turn_the_share_of_beam_to_the_sun()
    {
        double share = 600.0 / 1367, turned = 100 * share * (Math.Sqrt(3) / 2) / 0.5;
        SunOnSurface found = On(new(90, 180), Up30South);
        Assert.Equal(600 * Math.Sqrt(3) / 2 + turned, found.BeamWPerM2, 1e-9);
        Assert.Equal(100 * (1 - share) / 2, found.SkyWPerM2, 1e-9);
    }

    [Fact]
    public void The_shaded_side_receives_no_beam() => Assert.Equal(0, On(new(90, 0), Up30South).BeamWPerM2);

    [Fact]
    public void The_underside_of_a_floor_receives_only_what_the_ground_throws_back()
    {
        SunOnSurface found = On(new(180, 0), Up30South, ground: 0.7);
        Assert.Equal(0, found.BeamWPerM2);
        Assert.Equal(0, found.SkyWPerM2, 1e-9);
        Assert.Equal(400 * 0.7, found.GroundWPerM2, 1e-9);
    }

    [Fact]
    public void Turning_the_vehicle_turns_all_its_sides()
    {
        // Nose to the east: the right side (90° from the nose) looks south.
        Assert.Equal(180, SurfaceAspect.OfPanel(90, 90, 90).AzimuthDeg);
        Assert.Equal(On(new(90, 180), Up30South), On(SurfaceAspect.OfPanel(90, 270, 270), Up30South));
    }

    /// <summary>Horizon γ all round: a roof sees cos²γ of the sky, a wall 1/2 − (γ + sin γ cos γ)/π.</summary>
    [Theory, InlineData(5), InlineData(20), InlineData(45), InlineData(70)]
    public void A_horizon_hides_the_share_of_sky_that_the_integral_gives(double horizonDeg)
    {
        double g = horizonDeg * Math.PI / 180;
        // 2e-5: the sum over 360 directions of a half cosine wave, whose midpoint rule errs by (π/360)²/6 of itself.
        Assert.Equal(Math.Cos(g) * Math.Cos(g), new SurfaceAspect(0, 0, horizonDeg).SkyViewFraction, 2e-5);
        Assert.Equal(0.5 - (g + Math.Sin(g) * Math.Cos(g)) / Math.PI, new SurfaceAspect(90, 0, horizonDeg).SkyViewFraction, 2e-5);
    }

    // 1e-4: as above; a horizon of a hundred-millionth of a degree is a flat one.
    [Theory, InlineData(10), InlineData(60), InlineData(90), InlineData(120), InlineData(170)]
    public void Without_a_horizon_the_integral_is_half_of_one_plus_the_cosine(double tiltDeg) =>
        Assert.Equal((1 + Math.Cos(tiltDeg * Math.PI / 180)) / 2, new SurfaceAspect(tiltDeg, 0, 1e-8).SkyViewFraction, 1e-4);

    [Fact]
    public void A_sun_below_the_hills_gives_no_beam_and_no_light_round_it()
    {
        SunOnSurface found = On(new(90, 180, 35), Up30South);
        Assert.Equal(0, found.BeamWPerM2);
        Assert.Equal(100 * new SurfaceAspect(90, 180, 35).SkyViewFraction, found.SkyWPerM2, 1e-9);
    }

    /// <summary>On the equator at an equinox the sun passes overhead; half a year on the pole circle has no night and no day.</summary>
    [Fact]
    public void The_ends_of_the_year_and_of_the_world_are_right()
    {
        Assert.Equal(90, SunAboveAir.SunsetDeg(0, 81), 1e-9);
        Assert.Equal(0, SunAboveAir.SunsetDeg(70, 355));
        Assert.Equal(180, SunAboveAir.SunsetDeg(70, 172));
        Assert.Equal(0, SunAboveAir.DayWhPerM2(70, 355));
        // Solstice of 2025 by the almanac: 21 June, 02:42 UTC; declination 23.44° then (0.01° as above).
        Assert.Equal(23.436, SunPosition.At(0, 0, new(2025, 6, 21, 2, 42, 0, DateTimeKind.Utc)).DeclinationDeg, 0.01);
        // Equinox of 2025 by the almanac: 20 March, 09:01 UTC; the sun crosses the equator, moving 0.016° an hour.
        Assert.Equal(0, SunPosition.At(0, 0, new(2025, 3, 20, 9, 1, 0, DateTimeKind.Utc)).DeclinationDeg, 0.01);
    }

    /// <summary>Reciprocity of the hemispheres: noon at latitude φ in June is noon at −φ in December, but for the orbit.</summary>
    [Fact]
    public void At_solar_noon_the_sun_stands_at_90_less_latitude_plus_declination()
    {
        DateTime noon = new(2025, 1, 15, 12, 0, 0, DateTimeKind.Utc);
        SunPosition rough = SunPosition.At(50, 0, noon);
        SunPosition found = SunPosition.At(50, 0, noon.AddHours(-rough.EquationOfTimeH));
        // 0.01 h of the equation's change within its own correction is 1e-5°; the hour angle is flat at noon.
        Assert.Equal(90 - 50 + found.DeclinationDeg, found.ElevationDeg, 1e-4);
        Assert.Equal(180, found.AzimuthDeg, 0.02);
    }

    [Fact]
    public void An_overcast_sky_is_as_warm_as_the_air() => Assert.Equal(-7.5, SkyTemperature.OfC(-7.5, 250, 1), 1e-9);

    // 315.657 W/m² is σ·273.15⁴ by the constant of the SI.
    [Fact]
    public void Measured_longwave_gives_back_its_black_temperature() => Assert.Equal(0, SkyTemperature.OfLongwaveC(5.670374419e-8 * 273.15 * 273.15 * 273.15 * 273.15), 1e-9);

    /// <summary>Kt that a cloudless sky at sea level lets through by Crawford and Duchon is 0.75: no cloud; none at all: all cloud.</summary>
    [Theory, InlineData(7500, 0, 0.0), InlineData(0, 0, 1.0), InlineData(3750, 0, 0.5), InlineData(7900, 2000, 0.0), InlineData(9000, 0, 0.0)]
    public void Clouds_are_what_is_missing_from_a_clear_day(double globalWhPerM2, double altitudeM, double cloud) =>
        Assert.Equal(cloud, SkyTemperature.CloudFraction(globalWhPerM2, 10_000, altitudeM), 1e-9);
}
