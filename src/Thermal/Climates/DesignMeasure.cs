namespace Thermal.Climates;

/// <summary>What a winter design temperature measures; the measures differ by several kelvin at one place and must not be mixed.</summary>
public enum DesignMeasure
{
    /// <summary>As its note says; its definition is none of the others, or is not known.</summary>
    AsNoted,
    /// <summary>Temperature that 99.6 % of all hours exceed: 35 hours of a year are colder. Source: ASHRAE-F, climatic design information (from memory).</summary>
    HoursAt996,
    /// <summary>Temperature that 99 % of all hours exceed: 88 hours of a year are colder. Source: ASHRAE-F, climatic design information.</summary>
    HoursAt99,
    /// <summary>Mean of the two coldest days in a row: of many years the one reached ten times in twenty (the tradition of EN 12831), of one year its lowest.</summary>
    TwoDayMean,
    /// <summary>Mean of the lowest temperature of each year: the worst night of an ordinary winter. Of one year, its lowest.</summary>
    YearlyLowest,
}
