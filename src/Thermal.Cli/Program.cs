using System.Globalization;

namespace Thermal.Cli;

/// <summary>The entrance of the command line.</summary>
internal static class Program
{
    private static int Main(string[] args)
    {
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;
        return CommandLine.Run(args, Terminal.OfThisProcess(), TimeProvider.System);
    }
}
