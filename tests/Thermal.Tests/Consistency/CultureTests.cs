namespace Thermal.Tests.Consistency;

/// <summary>The suite must notice a number that is read or written in the user's culture.</summary>
public sealed class CultureTests
{
    [Fact]
    public void All_tests_run_in_a_culture_that_writes_a_decimal_comma() => Assert.Equal("1,5", 1.5.ToString());

    [Fact]
    public async Task Work_on_other_threads_runs_in_that_culture_too() =>
        Assert.Equal("1,5", await Task.Run(() => 1.5.ToString(), TestContext.Current.CancellationToken));
}
