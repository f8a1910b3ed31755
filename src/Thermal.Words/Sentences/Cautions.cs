using Thermal.Assessments;
using Thermal.Envelope;
using Thermal.Materials;

namespace Thermal.Words.Sentences;

/// <summary>What can hurt someone in a vehicle like this one. The usual cautions of the trade; local codes and licensed people come first.</summary>
public static class Cautions
{
    /// <summary>The cautions that this case calls for, the deadliest first.</summary>
    /// <param name="assessed">The case.</param>
    public static IReadOnlyList<string> Of(Case assessed)
    {
        List<string> cautions = [];
        bool burns = assessed.Heater.BurnsAir || assessed.Habits.CookerFuel is not (null or Fuel.Electricity);
        if (burns)
            cautions.Add("Carbon monoxide kills without a smell. Fit an alarm made for vehicles and test it; never sleep beside a burner without a flue, and never heat with the cooker.");
        if (assessed.Heater.BurnsAir)
            cautions.Add("The heater must take its combustion air from outside and send its exhaust where it cannot return by vents, windows or the warm-air intake. Keep the exhaust clear of snow, and switch off when refuelling.");
        cautions.Add("Fixed vents stay open, all of them, in every weather. They are there for breath and gas, not for comfort; nothing here is a reason to close one.");
        cautions.Add("A roof fan that draws air out needs an open inlet away from any exhaust, or it draws exhaust in.");
        if (UsesGas(assessed))
            cautions.Add("Gas sinks and gathers: it needs drop vents low down, a sealed locker for the bottles, and a fitter licensed for vehicles where the law asks for one.");
        if (UsesMains(assessed))
            cautions.Add("Mains voltage in a vehicle needs an earth-leakage breaker, cable for moving installations and, in many places, a licensed electrician.");
        if (assessed.BatteryAh is not null)
            cautions.Add("Lithium cells must not be charged below freezing: a battery in an unheated hold needs a management unit that stops it. Lead batteries give off gas and need a vent.");
        if (HasFoam(assessed.Vehicle))
            cautions.Add("Foam burns, and its smoke is poison. Ask the seller for its fire class, keep it away from flues and cables that run warm, and cover it.");
        cautions.Add("Warm and dry figures are not an approval. Codes of your country, the makers' instructions and licensed practice come before anything written here.");
        return cautions;
    }

    private static bool UsesGas(Case assessed) =>
        assessed.Heater.Fuel is Fuel.Propane or Fuel.Butane || assessed.Habits.CookerFuel is Fuel.Propane or Fuel.Butane;

    private static bool UsesMains(Case assessed) =>
        assessed.Heater.Fuel == Fuel.Electricity || assessed.Habits.CookerFuel is Fuel.Electricity;

    private static bool HasFoam(Vehicle vehicle) => vehicle.Surfaces
        .SelectMany(surface => surface.Openings.Select(opening => opening.Leaf).OfType<Stack>().Prepend(surface.Stack))
        .SelectMany(stack => stack.Layers)
        .OfType<SolidLayer>()
        .Any(layer => layer.Material.Group == MaterialGroup.Foam);
}
