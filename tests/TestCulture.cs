using System.Globalization;
using System.Runtime.CompilerServices;

namespace Thermal.Tests;

/// <summary>Runs the whole assembly in a culture that writes 1,5, so that a number read or written by the user's culture is caught.</summary>
internal static class TestCulture
{
    /// <summary>Built from the invariant culture, so that it is the same on a machine without any culture data.</summary>
    [ModuleInitializer]
    internal static void Set()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NumberGroupSeparator = ".";
        culture.NumberFormat.PercentDecimalSeparator = ",";
        culture.NumberFormat.PercentGroupSeparator = ".";
        culture.NumberFormat.CurrencyDecimalSeparator = ",";
        culture.NumberFormat.CurrencyGroupSeparator = ".";
        CultureInfo.DefaultThreadCurrentCulture = culture;
        CultureInfo.CurrentCulture = culture;
    }
}
