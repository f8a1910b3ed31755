using Thermal.Assessments;
using Thermal.Envelope;

namespace Thermal.Files.Tests.Vehicles;

/// <summary>Changing one value leaves the rest of the text as the person wrote it.</summary>
public sealed class EditTests
{
    private static readonly string Text = VehicleLibrary.Text("library-van")!;

    [Fact]
    public void Only_the_thickness_differs_and_its_unit_stays()
    {
        string edited = VehicleEdit.SetThickness(Text, "roof", 1, 0.08);
        Assert.Equal(Text.Replace("{material: sheep_wool, thickness: 60 mm}", "{material: sheep_wool, thickness: 80 mm}", StringComparison.Ordinal), edited);
        Case changed = VehicleFile.Read(edited, "van.yaml").Value!;
        Assert.Equal(0.08, changed.Vehicle.Surfaces.Single(surface => surface.Name == "roof").Stack.Layers[1].ThicknessM);
    }

    [Theory]
    [InlineData("2.5 in", "2 in")]
    [InlineData("\"2.5 in\"", "\"2 in\"")]
    [InlineData("6 cm", "5.08 cm")]
    [InlineData("0.06m", "0.0508m")]
    public void A_persons_own_unit_and_quotes_survive(string written, string after)
    {
        string text = Text.Replace("material: sheep_wool, thickness: 60 mm", $"material: sheep_wool, thickness: {written}", StringComparison.Ordinal);
        Assert.Contains($"thickness: {after}}}", VehicleEdit.SetThickness(text, "roof", 1, 0.0508), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("roof", 3)]
    [InlineData("roof", -1)]
    [InlineData("no such panel", 0)]
    public void A_layer_that_does_not_exist_is_refused(string surface, int layer) => Assert.Throws<ArgumentException>(() => VehicleEdit.SetThickness(Text, surface, layer, 0.05));

    [Theory]
    [InlineData(0)]
    [InlineData(40)]
    [InlineData(double.NaN)]
    public void A_thickness_outside_its_range_is_refused(double thicknessM) => Assert.Throws<ArgumentOutOfRangeException>(() => VehicleEdit.SetThickness(Text, "roof", 1, thicknessM));

    /// <summary>45 mm of rib in 66 mm stay as they are; in 36 mm the reader says what does not fit, and the text is kept all the same.</summary>
    [Theory]
    [InlineData(0.080, "")]
    [InlineData(0.030, "side ribs / depth: this hat rib is 45 mm deep, but the build-up inside the skin is only 36 mm")]
    public void A_described_rib_is_not_touched_by_a_new_thickness(double thicknessM, string problem)
    {
        string edited = VehicleEdit.SetThickness(DetailVan.Text, "left side", 1, thicknessM);
        Assert.Equal(DetailVan.Text.Replace("{material: xps, thickness: 60 mm}\n      - {material: steel_sheet", $"{{material: xps, thickness: {thicknessM * 1000:0} mm}}\n      - {{material: steel_sheet", StringComparison.Ordinal), edited);
        Reading<Case> reading = VehicleFile.Read(edited, "details.yaml");
        if (problem.Length > 0)
            Assert.Contains(reading.Problems, found => $"{found.Where}: {found.What}".Contains(problem, StringComparison.Ordinal));
        else
            Assert.Equal(0.045, ((Envelope.Details.Rib)reading.Value!.Vehicle.Surfaces[0].Ribs[0].Detail!).DepthM);
    }

    [Fact]
    public void A_byte_order_mark_does_not_shift_the_place() =>
        Assert.Equal("\uFEFF" + VehicleEdit.SetThickness(Text, "floor", 2, 0.05), VehicleEdit.SetThickness("\uFEFF" + Text, "floor", 2, 0.05));

    [Fact]
    public void The_starter_is_read_without_a_problem_and_has_one_living_space()
    {
        Reading<Case> reading = VehicleFile.Read(VehicleFile.Starter(), "my-van.yaml");
        Assert.Empty(reading.Problems);
        Assert.Equal(ZoneKind.Living, Assert.Single(reading.Value!.Vehicle.Zones).Kind);
    }
}
