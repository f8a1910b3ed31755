namespace Thermal.Reports.Working;

/// <summary>One line of a working: what is found, by which formula, from which numbers, with which result and by which clause.</summary>
internal sealed record Step(string What, string Formula, string PutIn, string Result, string Clause);
