using Thermal.Heating;
using Thermal.People;

namespace Thermal.Tests.Exact;

/// <summary>
/// Warm-up of one and of two heat stores, and of a well-mixed room, by closed forms evaluated elsewhere to three decimals
/// (an independent script); half the last digit unless said otherwise.
/// </summary>
public class TwoStoreTests
{
    private const double Half = 0.00051;

    /// <summary>C 150 kJ/K, UA 45 W/K, P 2000 W: ΔT = P/UA·(1 − e^(−UA·t/C)). A mass of 1 J/K held tightly to the air is no second store.</summary>
    private static readonly TwoNode One = new(149_999, 1, 1e6, 45, 0);

    private static readonly TwoNode Two = new(60_000, 400_000, 80, 30, 5);

    [Theory, InlineData(600, -2.679), InlineData(1800, 8.545), InlineData(3600, 19.351), InlineData(7200, 29.319)]
    public void One_store_warms_as_the_exponential_says(double seconds, double airC) =>
        Assert.Equal(airC, -10 + One.After(seconds / 3600, 2000).AirK, Half);

    [Fact]
    public void One_store_reaches_20_degrees_after_3746_seconds() => Assert.Equal(3746, One.WarmUpH(30, 2000)!.Value * 3600, 0.5);

    [Theory]
    [InlineData(0.25, -0.895, -9.051)]
    [InlineData(0.5, 1.699, -7.475)]
    [InlineData(1, 4.339, -4.333)]
    [InlineData(2, 8.391, 1.040)]
    [InlineData(4, 14.216, 8.778)]
    [InlineData(8, 20.331, 16.902)]
    [InlineData(1000, 24.576, 22.542)]
    public void Two_stores_warm_as_the_closed_form_says(double hours, double airC, double massC)
    {
        (double air, double mass) = Two.After(hours, 1200);
        Assert.Equal(airC, -10 + air, Half);
        Assert.Equal(massC, -10 + mass, Half);
    }

    /// <summary>0.140 h and 4.483 h: the slow one from the tail of a decay, the fast one from a start along its own direction (within 1 %, as 0.140 is rounded).</summary>
    [Fact]
    public void Two_stores_have_the_stated_time_constants()
    {
        (double early, _) = Two.After(20, 0, 30, 30);
        (double late, _) = Two.After(25, 0, 30, 30);
        Assert.Equal(4.483, 5 / Math.Log(early / late), 0.0005);
        double fast = -1 / (0.140 * 3600), direction = (fast + (80 + 30) / 60_000.0) / (80 / 60_000.0);
        Assert.Equal(Math.Exp(-1), Two.After(0.140, 0, 1, direction).AirK, 0.01);
    }

    [Fact]
    public void Warm_up_power_and_warm_up_time_undo_each_other()
    {
        Assert.Equal(1200, Two.WarmUpW(14.216 + 10, 4), 0.05); // the printed temperature after 4 h
        Assert.Equal(4, Two.WarmUpH(24.216, 1200)!.Value, 0.0005);
        Assert.Null(Two.WarmUpH(34.6, 1200)); // steady 34.576 K
        Assert.Equal(1200 / 34.576, Two.SteadyWPerK, 0.001);
    }

    /// <summary>
    /// V 10 m³, 1/h, 40 g/h from 4 g/m³: 4.885, 5.574, 6.528, 7.459, 7.927 g/m³. Carbon dioxide obeys the same equation, so its share of the
    /// steady excess must be (v − 4)/4; the night is always an hour and the room's volume sets the hours in units of its air change.
    /// </summary>
    [Theory, InlineData(0.25, 4.885), InlineData(0.5, 5.574), InlineData(1, 6.528), InlineData(2, 7.459), InlineData(4, 7.927)]
    public void A_well_mixed_room_fills_as_the_closed_form_says(double airChanges, double concentration)
    {
        Habits two = new() { SleepersCount = 2, NightH = 1, AtHomeH = 1 };
        double excess = BodyLoads.CarbonDioxideAtDawnPpm(two, 10 / airChanges, 10) - BodyLoads.OutsideCarbonDioxidePpm;
        Assert.Equal((concentration - 4) / 4, excess / (2 * 13 / 10.0 * 1000), Half / 4);
    }

    /// <summary>Without air it rises in a straight line: 3 h at 20 L/h and 8 h at 13 L/h in 10 m³.</summary>
    [Fact]
    public void A_closed_room_fills_in_a_straight_line() =>
        Assert.Equal(420 + (3 * 20 + 8 * 13) / 10.0 * 1000, BodyLoads.CarbonDioxideAtDawnPpm(new() { SleepersCount = 1, NightH = 8, AtHomeH = 11 }, 10, 0), 1e-6);
}
