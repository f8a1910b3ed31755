using Thermal.Bridges;
using Thermal.Envelope.Details;
using Thermal.Materials;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Files.Tests.Sentences;

/// <summary>What is wrong with a detail or a section is said with its numbers, in a person's units, and with what to change.</summary>
public sealed class DetailSentenceTests
{
    private static readonly Material Steel = MaterialLibrary.Find("steel_sheet")!;
    private static readonly Rib Hat = new() { Shape = RibShape.Hat, Material = Steel, SheetM = 0.001, DepthM = 0.045, CrownM = 0.04, FootM = 0.02 };
    private static readonly Bolt Bolt = new() { Material = Steel, DiameterM = 0.008, HeadM = 0.006 };

    public static TheoryData<DetailFault> DetailFaults => [.. Enum.GetValues<DetailFault>()];
    public static TheoryData<SectionFault> SectionFaults => [.. Enum.GetValues<SectionFault>()];

    [Theory, MemberData(nameof(DetailFaults))]
    public void Every_fault_of_a_detail_is_said_with_what_to_change(DetailFault fault)
    {
        string words = DetailProblems.Of(new DetailProblem(fault, 0.045, 0.04), Hat, Figures.Metric);
        Assert.Matches("^[a-z].*[;:,] .*(make|check|leave|count|close)[^.]*$", words);
    }

    [Fact]
    public void A_rib_too_deep_is_told_both_depths() => Assert.Equal(
        "this hat rib is 45 mm deep, but the build-up inside the skin is only 40 mm; make it shallower or the layers thicker",
        DetailProblems.Of(new DetailProblem(DetailFault.DeeperThanWall, 0.045, 0.04), Hat, Figures.Metric));

    [Fact]
    public void The_depths_are_said_in_inches_to_whom_reads_inches() => Assert.Contains(
        "is 1.77 in deep, but the build-up inside the skin is only 1.57 in",
        DetailProblems.Of(new DetailProblem(DetailFault.DeeperThanWall, 0.045, 0.04), Hat, Figures.Us), StringComparison.Ordinal);

    [Fact]
    public void A_head_narrower_than_its_shank_is_told_both_diameters() => Assert.Equal(
        "a head of this bolt is 6 mm wide, narrower than its shank of 8 mm; check heads and diameter",
        DetailProblems.Of(new DetailProblem(DetailFault.HeadNarrowerThanShank, 0.006, 0.008), Bolt, Figures.Metric));

    [Theory, MemberData(nameof(SectionFaults))]
    public void Every_fault_of_a_section_is_a_sentence_with_what_to_change(SectionFault fault)
    {
        string words = SectionProblems.Of(new SectionProblem(fault, "foam", "rib", new Box(0, 0.04, 0.001, 0.002)), Figures.Metric);
        Assert.Matches("^[A-Z].*\\.$", words);
        Assert.True(fault == SectionFault.NoPieces || words.Contains("foam", StringComparison.OrdinalIgnoreCase), words);
    }

    [Fact]
    public void An_overlap_names_both_pieces_and_the_place() => Assert.Equal(
        "Foam and rib claim the same place at 0 mm to 40 mm across and 1 mm up; move one, or mark the later one as set into the other.",
        SectionProblems.Of(new SectionProblem(SectionFault.Overlap, "foam", "rib", new Box(0, 0.04, 0.001, 0.001)), Figures.Metric));

    /// <summary>What is wrong may be that an end is no number.</summary>
    [Fact]
    public void An_end_that_is_no_number_is_said_so() => Assert.Contains(
        "at no number to the far end across",
        SectionProblems.Of(new SectionProblem(SectionFault.NoThickness, "foam", null, new Box(double.NaN, double.PositiveInfinity, 0, 1)), Figures.Metric), StringComparison.Ordinal);

    [Fact]
    public void Every_shape_of_rib_has_a_name_of_its_own() =>
        Assert.Equal(Enum.GetValues<RibShape>().Length, Enum.GetValues<RibShape>().Select(DetailNames.Of).Distinct().Count());
}
