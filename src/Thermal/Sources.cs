namespace Thermal;

/// <summary>Every document a number or a formula comes from, once: key, title, edition.</summary>
public static class Sources
{
    /// <summary>All documents, in the order of their keys.</summary>
    public static IReadOnlyList<Source> All { get; } =
    [
        new("ABRAMOWITZ", "Abramowitz and Stegun, Handbook of Mathematical Functions, chapter 26 (from memory)"),
        new("ASHRAE-F", "ASHRAE Handbook, Fundamentals (2017), chapter 1: psychrometrics, tables 1 to 3; chapter 18 for body heat"),
        new("ATP", "UNECE agreement on perishable foodstuffs (ATP), annex 1, appendix 2: insulated vehicle bodies"),
        new("BENDT-1981", "Bendt, Collares-Pereira and Rabl, Solar Energy 27 (1981) 1: frequency of daily clearness"),
        new("BYG601G", "Building physics course book BYG601G, University of Iceland, chapters 2 and 3"),
        new("CHEM", "Stoichiometry of complete combustion with standard atomic masses"),
        new("CIBSE-A", "CIBSE Guide A, tables 3.36 and 3.37: thermal properties of materials"),
        new("CPR-1979", "Collares-Pereira and Rabl, Solar Energy 22 (1979) 155: average distribution of solar radiation over the day"),
        new("CRAWFORD-1999", "Crawford and Duchon, Journal of Applied Meteorology 38 (1999) 474: cloud share and longwave radiation"),
        new("DIN-4108-3", "DIN 4108-3, protection against moisture: block climate and annex formulas"),
        new("DUFFIE", "Duffie and Beckman, Solar Engineering of Thermal Processes, chapters 1 and 2"),
        new("EKB-1983", "Erbs, Klein and Beckman (1983): year-to-year spread of monthly mean temperatures (from memory)"),
        new("EN-13125", "EN 13125 and ISO 10077-1, additional thermal resistance of shutters by air permeability class"),
        new("EN-1646-1", "EN 1646-1, motor caravans: habitation requirements, heating grades (secondary sources)"),
        new("EN-673", "EN 673, glass in building: thermal transmittance (U value), calculation method"),
        new("EN-721", "EN 721, leisure accommodation vehicles: safety ventilation (quoted from an inspection leaflet)"),
        new("ERBS-1982", "Erbs, Klein and Duffie, Solar Energy 28 (1982) 293: diffuse fraction"),
        new("ERBS-1983", "Erbs, Klein and Beckman, ASHRAE Journal (1983): daily cycle of temperature from monthly means"),
        new("FAO-56", "FAO irrigation and drainage paper 56 (1998): estimates of missing weather data (from memory)"),
        new("HOLLANDS-1983", "Hollands and Huget, Solar Energy 30 (1983) 195: exponent of the daily clearness distribution"),
        new("HV-1999", "Hukka and Viitanen, Wood Science and Technology 33 (1999) 475: mould growth on wood"),
        new("ISO-10077-2", "ISO 10077-2, thermal performance of windows, doors and shutters: numerical method for frames (from memory)"),
        new("ISO-10211", "ISO 10211, thermal bridges in building construction: heat flows and surface temperatures, detailed calculations"),
        new("ISO-10456", "ISO 10456:2007, tabulated design values of building materials"),
        new("ISO-12241", "ISO 12241, thermal insulation for equipment and pipes: calculation rules"),
        new("ISO-13788", "ISO 13788:2012, surface humidity and interstitial condensation: calculation methods"),
        new("ISO-6946", "ISO 6946:2017, thermal resistance and thermal transmittance: calculation methods"),
        new("ISO-9223", "ISO 9223, corrosion of metals and alloys: corrosivity of atmospheres, time of wetness (from memory)"),
        new("LEHRBUCH", "Lehrbuch der Bauphysik (Willems, ed.), chapters 2, 3, 5, 6 and 13"),
        new("MASTERS", "Masters, Renewable and Efficient Electric Power Systems, chapter on the solar resource"),
        new("MEEUS", "Meeus, Astronomical Algorithms, 2nd edition (1998), chapters 12, 22 and 25 (from memory)"),
        new("OJANEN-2010", "Ojanen and others, Thermal Performance of the Exterior Envelopes of Whole Buildings XI (2010): mould growth model for more materials (from memory)"),
        new("OURS", "Chosen by us; a named default that a person can change"),
        new("PRACTICE", "Common practice of the trade: trade pages, owners' handbooks, forums"),
        new("PRATA-1996", "Prata, Quarterly Journal of the Royal Meteorological Society 122 (1996) 1127: clear-sky longwave emissivity (from memory)"),
        new("PVGIS", "European Commission, Joint Research Centre: PVGIS 5.3, typical year as CSV, with the legend in the file"),
        new("RICHARDSON-1981", "Richardson, Water Resources Research 17 (1981) 182: daily weather generator, its lag matrices"),
        new("STD-ATM", "ISO 2533, standard atmosphere"),
        new("TMY3", "Wilcox and Marion, Users Manual for TMY3 Data Sets, NREL/TP-581-43156 (2008)"),
        new("TRADE", "Published trade and handbook figures on leisure vehicles, gathered in the project's material and heater tables"),
    ];

    /// <summary>True when a source with this key is listed.</summary>
    /// <param name="key">A key such as ISO-6946.</param>
    public static bool Knows(string key) => All.Any(source => source.Key == key);
}
