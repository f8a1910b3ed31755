using Thermal.Assessments;

namespace Thermal.Trips;

/// <summary>What a trip is reckoned for: a vehicle with all that is fitted, and the journey. Immutable.</summary>
/// <param name="Case">The vehicle, its people's figures (vapour a meal, a shower …), heater, power, tanks. Its place and nights are not used.</param>
/// <param name="Trip">The journey.</param>
public sealed record TripCase(Case Case, Trip Trip);
