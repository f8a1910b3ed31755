using System.CommandLine;
using Thermal.Cli.Json;
using Thermal.Materials;
using Thermal.Words;

namespace Thermal.Cli.Commands;

/// <summary>Lists the built-in materials.</summary>
internal static class MaterialsCommand
{
    internal static Command Create(Terminal terminal)
    {
        Argument<string?> search = SharedOptions.Search("Part of a name, such as wool. Left out: all of them.");
        Option<bool> json = SharedOptions.Json();
        Option<string> units = SharedOptions.Units();
        var command = new Command("materials", "List the built-in materials with what they conduct, weigh and let through.") { search, json, units };
        command.SetAction(parsed => Run(parsed.GetValue(search), parsed.GetValue(json), SharedOptions.FiguresOf(parsed, units), terminal));
        return command;
    }

    private static int Run(string? search, bool json, Figures figures, Terminal terminal)
    {
        Material[] found = [.. MaterialLibrary.All.Where(material => search is null || Fits(material, search))];
        if (json)
            JsonText.Write(terminal.Answers, top => top.Objects("materials", found, MaterialJson.Write));
        else if (found.Length == 0)
            terminal.Answers.WriteLine($"No material has \"{search}\" in its name. The command materials alone lists all {MaterialLibrary.All.Count}.");
        else
            Table(found, figures, terminal);
        return ExitCode.Computed;
    }

    private static bool Fits(Material material, string search) =>
        material.Key.Contains(search, StringComparison.OrdinalIgnoreCase)
        || material.Name.Contains(search, StringComparison.OrdinalIgnoreCase)
        || material.Key.Replace('_', ' ').Contains(search, StringComparison.OrdinalIgnoreCase);

    private static void Table(Material[] found, Figures figures, Terminal terminal)
    {
        var table = new TextTable("Key", "Name", $">λ {figures.Unit(Shown.Conductivity)}", ">low", ">high", $">{figures.Unit(Shown.Density)}", ">μ or s_d", "Source");
        foreach (Material material in found)
        {
            Bounded conductivity = material.ConductivityWPerMK;
            table.Row(material.Key, material.Name,
                figures.Number(Shown.Conductivity, conductivity.Value), figures.Number(Shown.Conductivity, conductivity.Low), figures.Number(Shown.Conductivity, conductivity.High),
                figures.Number(Shown.Density, material.DensityKgPerM3.Value), Vapour(material, figures), conductivity.Source);
        }
        table.WriteTo(terminal);
        terminal.Answers.WriteLine();
        terminal.Paragraph("λ is the conductivity, dry, with its lowest and highest plausible value; μ how many times harder vapour gets through than through still air; s_d, for films, the still air that holds vapour back as much. --json has every figure with its source.");
    }

    private static string Vapour(Material material, Figures figures) => material.FilmDiffusionThicknessM is { } film
        ? figures.Write(Shown.DiffusionThickness, film.Value)
        : figures.Write(Shown.Factor, material.VapourResistanceFactor!.Value);
}
