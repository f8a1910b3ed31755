using Thermal.Trips.Course;
using Thermal.Trips.Damp;
using Thermal.Trips.Heat;
using Thermal.Trips.Living;
using Thermal.Trips.Outdoors;

namespace Thermal.Trips.Books;

/// <summary>What the books read after each step. One object for a whole trip.</summary>
internal sealed class StepFacts
{
    /// <summary>Faces and rooms.</summary>
    internal required Body Body { get; init; }
    /// <summary>Temperatures at the end of the step.</summary>
    internal required HeatStepper Heat { get; init; }
    /// <summary>Water at the end of the step.</summary>
    internal required DampStepper Damp { get; init; }
    /// <summary>What acted.</summary>
    internal required Drive Drive { get; init; }
    /// <summary>What people did.</summary>
    internal required Doings Doing { get; init; }
    /// <summary>The outside.</summary>
    internal required OutdoorsNow Outside { get; init; }
    /// <summary>Air exchange.</summary>
    internal required AirCourse Air { get; init; }
    /// <summary>Heater, battery, tanks.</summary>
    internal required Board Board { get; init; }
    /// <summary>Carbon dioxide.</summary>
    internal required CarbonDioxide CarbonDioxide { get; init; }
    /// <summary>Index of the living space.</summary>
    internal required int Living { get; init; }

    /// <summary>Begin of the step, local standard time.</summary>
    internal DateTime Local;
    /// <summary>Length of the step, s.</summary>
    internal double StepS;
    /// <summary>Index of the leg.</summary>
    internal int Leg;
    /// <summary>Habits on it.</summary>
    internal TripHabits Habits = null!;
    /// <summary>Mean heat of the heater in the step, W.</summary>
    internal double HeaterW;
    /// <summary>Sun on the flat, W/m².</summary>
    internal double SunOnFlatWPerM2;
    /// <summary>Heat of loads, and of tanks and battery, W.</summary>
    internal double LoadsW, StoresW;
    /// <summary>Heat of the engine, W.</summary>
    internal double EngineW;

    /// <summary>Operative temperature of the living space, °C.</summary>
    internal double OperativeC => Heat.State.OperativeC(Living);
    /// <summary>True where it is over 1 K colder than wanted; never while the heater is switched off.</summary>
    internal bool IsShort => OperativeC < Doing.WantedC - ComfortBook.ColdBelowK;
}
