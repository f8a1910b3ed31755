namespace Thermal.Files.Tests.Vehicles;

/// <summary>A rib, bolt or edge that cannot be is refused at its place, with what to write instead.</summary>
public sealed class DetailRefusalTests
{
    /// <summary>What is replaced, by what; the text that stands where the problem is placed; where; and what the problem must say.</summary>
    [Theory]
    // Both ways to tell a bridge, neither, or pieces of the other.
    [InlineData("psi: 0.15 W/(m·K), length", "psi: 0.15 W/(m·K), shape: hat, length", "0.15 W", "left side / rib of a data sheet / psi", "psi and shape both stand here; keep psi with given_for, or describe it by shape")]
    [InlineData("name: zeds, shape: zed, ", "name: zeds, ", "{name: zeds", "left side / zeds", "a rib needs shape (hat, zed, channel, box, plate, batten, corrugation, corner) with its numbers, or a psi found elsewhere with given_for; write one of them")]
    [InlineData("depth: 30 mm, width: 20 mm, inside: hollow,", "depth: 30 mm, width: 20 mm, coldest_factor: 0.6,", "0.6,", "left side / tubes / coldest_factor", "this is computed for what shape describes; remove it")]
    [InlineData("name: zeds, shape", "name: zeds, given_for: xps 60 mm, shape", "xps 60 mm, shape", "left side / zeds / given_for", "this is computed for what shape describes; remove it")]
    [InlineData("psi: 0.15 W/(m·K), length", "psi: 0.15 W/(m·K), crown: 33 mm, length", "33 mm", "left side / rib of a data sheet / crown", "this belongs to a description, and psi is given; remove it, or write shape in place of psi")]
    [InlineData("mould_factor: 0.6, given_for: \"birch_plywood 6 mm, xps 60 mm, steel_sheet 1 mm\"}", "mould_factor: 0.6}", "{name: rib of a data sheet", "left side / rib of a data sheet", "given_for is missing; only beside psi")]
    [InlineData("mould_factor: 0.6", "mould_factor: 1.6", "1.6", "left side / rib of a data sheet / mould_factor", "1.6 is outside 0 to 1")]
    [InlineData("mould_factor: 0.6, given_for: \"birch_plywood 6 mm", "mould_factor: 0.6, given_for: \"birch_plywood 6", "\"birch_plywood 6,", "left side / rib of a data sheet / given_for", "6 has no unit")]
    [InlineData("{name: rivets, diameter: 5 mm,", "{name: rivets,", "{name: rivets", "left side / rivets", "a bolt needs its diameter, and head if it has one, or a chi found elsewhere with given_for")]
    [InlineData("chi: 0.01 W/K,", "chi: 0.01 W/K, diameter: 5 mm,", "0.01 W/K", "left side / bolt of a data sheet / chi", "chi and diameter both stand here")]
    [InlineData("chi: 0.01 W/K,", "chi: 0.01 W/K, head: 21 mm,", "21 mm", "left side / bolt of a data sheet / head", "chi is given; remove it, or write diameter in place of chi")]
    [InlineData("glazing: [{pane: acrylic", "edge_psi: 0.05 W/(m·K)\n        glazing: [{pane: acrylic", "0.05 W", "left side / window / edge_psi", "edge_psi and edge both stand here")]
    // Shapes and their keys.
    [InlineData("shape: zed", "shape: zet", "zet", "left side / zeds / shape", "did you mean zed?")]
    [InlineData("shape: hat, sheet: 1.2 mm, depth: 45 mm, crown: 40 mm,", "shape: hat, sheet: 1.2 mm, depth: 45 mm,", "{name: side ribs", "left side / side ribs", "crown is missing; a hat needs sheet, depth, crown and foot")]
    [InlineData("flange: 25 mm", "flange: 25 mm, crown: 26 mm", "26 mm", "left side / zeds / crown", "a zed has no crown; its keys are sheet, depth, flange, foot, material, over and bare")]
    [InlineData("shape: plate, sheet: 4 mm", "shape: plate, inside: hollow, sheet: 4 mm", "hollow, sheet", "left side / flats / inside", "a plate has no inside; its keys are sheet, depth, material, over and bare")]
    [InlineData("shape: batten, material: softwood", "shape: batten", "{name: timber", "left side / timber", "material is missing; a batten needs material, width and depth")]
    [InlineData("shape: corrugation, depth", "shape: corrugation, sheet: 1.1 mm, depth", "1.1 mm", "floor / grooves / sheet", "a corrugation has no sheet; its keys are depth, groove and inside")]
    [InlineData("shape: corner, with: roof,", "shape: corner,", "{name: top edge", "left side / top edge", "with is missing; a corner needs with")]
    [InlineData("crown: 40 mm", "crwn: 40 mm", "crwn", "left side / side ribs / crwn", "did you mean crown?")]
    [InlineData("{shape: frame, depth: 30 mm, ", "{shape: frame, ", "{shape: frame", "left side / window / edge", "depth is missing; a frame needs depth and width")]
    [InlineData("lip: 15 mm", "seal: 15 mm", "15 mm", "left side / window / edge / seal", "a frame has no seal; its keys are depth, width, lip and gap")]
    [InlineData("edge: {shape: frame, depth: 30 mm, width: 40 mm, lip: 15 mm, gap: 5 mm}", "edge: {shape: door, sheet: 1.1 mm, post: 60 mm, depth: 40 mm, seal: 12 mm}", "{shape: door, sheet: 1.1", "left side / window / edge", "a door edge belongs to a leaf, and this opening has glazing")]
    [InlineData("edge: {shape: frame, depth: 30 mm, width: 40 mm, lip: 15 mm, gap: 5 mm}", "edge: frame", "frame", "left side / window / edge", "a single value stands here; write the keys of an edge: shape")]
    // Values.
    [InlineData("sheet: 1.2 mm, depth", "sheet: 12 cm, depth", "12 cm", "left side / side ribs / sheet", "12 cm is outside 0.3 mm to 20 mm; is 12 mm meant?")]
    [InlineData("sheet: 1.2 mm, depth", "sheet: 1.2, depth", "1.2, depth", "left side / side ribs / sheet", "1.2 has no unit")]
    [InlineData("depth: 45 mm", "depth: 45 cm", "45 cm", "left side / side ribs / depth", "45 cm is outside 2 mm to 300 mm")]
    [InlineData("depth: 45 mm", "depth: 2.5 mm", "2.5 mm", "left side / side ribs / depth", "2.5 mm is outside 3 mm to 300 mm")]
    [InlineData("depth: 8 mm", "depth: 80 mm", "80 mm, groove", "floor / grooves / depth", "80 mm is outside 2 mm to 50 mm")]
    [InlineData("{shape: frame, depth: 30 mm", "{shape: frame, depth: 250 mm", "250 mm", "left side / window / edge / depth", "250 mm is outside 5 mm to 200 mm")]
    [InlineData("post: 60 mm, depth: 30 mm", "post: 60 mm, depth: 6 mm", "6 mm, seal", "left side / door / edge / depth", "6 mm is outside 10 mm to 300 mm")]
    [InlineData("foot: 30 mm", "foot: -30 mm", "-30 mm", "left side / zeds / foot", "-30 mm is negative; write a value from 0 mm to 200 mm")]
    [InlineData("inside: sheep_wool", "inside: sheep_wol", "sheep_wol", "left side / filled hats / inside", "did you mean sheep_wool?")]
    [InlineData("inside: hollow, inside_emissivity: 0.3", "inside: xps, inside_emissivity: 0.3", "0.3, length", "left side / tubes / inside_emissivity", "only a hollow rib has an emissivity inside; remove it, or write inside: hollow")]
    [InlineData("bare: true", "bare: yes", "yes", "left side / channels / bare", "\"yes\" is not known here; write true or false")]
    [InlineData("thickness: 6 mm, width: 80 mm", "thickness: 0 mm, width: 80 mm", "0 mm, width: 80", "left side / filled hats / over / thickness", "0 mm is zero")]
    [InlineData("over: {material: softwood, thickness: 10 mm}", "over: softwood", "softwood, length: 1", "left side / flats / over", "write the keys of a strip over a rib: material, thickness")]
    [InlineData("sheet: 2 mm, leg: 40 mm", "sheet: 2 mm", "{name: sill", "left side / sill", "a metal angle in the corner needs both sheet and leg")]
    [InlineData("head: 24 mm, head_thickness: 7 mm", "head: 24 mm", "{name: rail bolts", "left side / rail bolts", "a head and head_thickness belong together")]
    [InlineData("{name: rivets, diameter: 5 mm,", "{name: rivets, diameter: 5 mm, outer_head: 9 mm,", "{name: rivets", "left side / rivets", "a head and head_thickness belong together")]
    [InlineData("layers_over: 1", "layers_over: 1.5", "1.5, material", "left side / rail bolts / layers_over", "is not a whole number")]
    [InlineData("diameter: 8 mm", "diameter: 80 mm", "80 mm, head", "left side / rail bolts / diameter", "80 mm is outside 1 mm to 50 mm")]
    // What does not fit its build-up: 66 mm inside the skin of the side, 42 mm of the floor, 35 mm of the leaf.
    [InlineData("depth: 45 mm", "depth: 70 mm", "70 mm, crown", "left side / side ribs / depth", "this hat rib is 70 mm deep, but the build-up inside the skin is only 66 mm; make it shallower or the layers thicker")]
    [InlineData("width: 45 mm, depth: 60 mm", "width: 45 mm, depth: 6.7 cm", "6.7 cm", "left side / timber / depth", "this batten is 67 mm deep, but the build-up inside the skin is only 66 mm")]
    [InlineData("thickness: 6 mm, width: 80 mm", "thickness: 31 mm, width: 80 mm", "{material: elastomeric_foam, thickness: 31", "left side / filled hats / over", "what lies over this hat rib is 31 mm thick, but only 30 mm are left between it and the room")]
    [InlineData("spacing: 500 mm, length: 16 m", "spacing: 79 mm, length: 16 m", "79 mm", "left side / side ribs / spacing", "this hat rib is 80 mm wide, but the next one stands 79 mm away; check its width and the spacing")]
    [InlineData("sheet: 2 mm, depth: 30 mm, width: 20 mm", "sheet: 11 mm, depth: 30 mm, width: 20 mm", "11 mm", "left side / tubes / sheet", "the sheet of this box rib is 11 mm thick, but its other sizes leave room for 9.")]
    [InlineData("sheet: 2 mm, leg: 40 mm", "sheet: 11 mm, leg: 10 mm", "11 mm", "left side / sill / sheet", "the sheet of this corner is 11 mm thick, but its other sizes leave room for 10 mm; check them all")]
    [InlineData("layers_over: 1", "layers_over: 3", "3, material", "left side / rail bolts / layers_over", "more layers are counted over the head of this bolt than the build-up has inside the skin")]
    [InlineData("head: 24 mm", "head: 7 mm", "7 mm, head_thickness", "left side / rail bolts / head", "a head of this bolt is 7 mm wide, narrower than its shank of 8 mm")]
    [InlineData("outer_head: 30 mm", "outer_head: 6 mm", "6 mm, layers", "left side / rail bolts / outer_head", "a head of this bolt is 6 mm wide, narrower than its shank of 8 mm")]
    [InlineData("head_thickness: 7 mm, outer_head: 30 mm, layers_over: 1", "head_thickness: 7 mm, outer_head: 30 mm, layers_over: 2", "7 mm, outer", "left side / rail bolts / head_thickness", "the head of this bolt is 7 mm thick, but only 0 mm are left")]
    [InlineData("diameter: 5 mm, count: 40", "diameter: 5 mm, head: 9 mm, head_thickness: 0 mm, count: 40", "0 mm, count", "left side / rivets / head_thickness", "a head wider than its shank but without thickness")]
    [InlineData("lip: 15 mm", "lip: 67 mm", "67 mm", "left side / window / edge / lip", "the lip of the skin is 67 mm deep, but the build-up inside the skin is only 66 mm")]
    [InlineData("post: 60 mm, depth: 30 mm", "post: 60 mm, depth: 40 mm", "40 mm, seal", "left side / door / edge / depth", "post and edge of the leaf are 40 mm deep, but panel and leaf leave only 35 mm inside their skins")]
    [InlineData("        edge: {shape: frame", "        frame_u: 7 W/(m²·K)\n        edge: {shape: frame", "7 W/(m²·K)", "left side / window / frame_u", "this frame_u lets through more than a flat frame with its films can")]
    // Corners.
    [InlineData("with: floor", "with: flor", "flor", "left side / sill / with", "there is no panel \"flor\"; did you mean floor?")]
    [InlineData("with: floor", "with: left side", "left side, sheet", "left side / sill / with", "this is the same one; write the name of the other")]
    public void A_fault_is_named_where_it_stands_with_what_to_write_instead(string old, string bad, string at, string where, string what)
    {
        int replaced = DetailVan.Text.IndexOf(old, StringComparison.Ordinal);
        Assert.InRange(replaced, 0, int.MaxValue);
        string text = DetailVan.Text[..replaced] + bad + DetailVan.Text[(replaced + old.Length)..];
        Reading<Assessments.Case> reading = VehicleFile.Read(text, "details.yaml");
        Assert.Null(reading.Value);
        Problem problem = Assert.Single(reading.Problems);
        Assert.Equal(where, problem.Where);
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
        int place = text.IndexOf(at, Math.Max(0, text.LastIndexOf('\n', replaced)), StringComparison.Ordinal);
        Assert.Equal((text[..place].Count(letter => letter == '\n') + 1, place - text.LastIndexOf('\n', place)), (problem.Line, problem.Column));
    }

    private const string Hold = """
          - name: hold wall
            place: left
            zone: hold
            outside: air
            area: 1 m²
            layers: [{material: steel_sheet, thickness: 1 mm}]
            lining: bonded
          - name: bed
            place: partition
            zone: living
            outside: hold
            area: 1 m²
            layers: [{material: birch_plywood, thickness: 12 mm}]
            lining: slatted

        """;

    [Theory]
    [InlineData("hold wall", "belongs to another room; a corner lies between two panels of one room")]
    [InlineData("bed", "a partition has a room there; leave this corner out")]
    public void A_corner_with_a_panel_it_cannot_meet_is_refused(string other, string what)
    {
        string text = DetailVan.Text.Replace("with: floor", $"with: {other}", StringComparison.Ordinal)
            .Replace("  - {name: living, kind: living}", "  - {name: living, kind: living}\n  - {name: hold, kind: hold, volume: 2 m³, floor_area: 2 m², height: 1 m}", StringComparison.Ordinal) + "\n" + Hold;
        Assert.Contains(what, Only(text, "left side / sill / with"), StringComparison.Ordinal);
    }

    private static string Only(string text, string where)
    {
        Problem problem = Assert.Single(VehicleFile.Read(text, "details.yaml").Problems);
        Assert.Equal(where, problem.Where);
        return problem.What;
    }

    [Fact]
    public void A_detail_that_would_cross_a_gap_open_to_the_outside_is_refused()
    {
        string text = DetailVan.Text.Replace("layers: [{material: birch_plywood, thickness: 12 mm}, {material: xps, thickness: 30 mm}", "layers: [{material: birch_plywood, thickness: 12 mm}, {material: air_gap, thickness: 30 mm, openings: 20 cm²}", StringComparison.Ordinal);
        Assert.Contains("an air gap open to the outside lies where this corrugation would cross it", Only(text, "floor / grooves"), StringComparison.Ordinal);
        string withoutGrooves = text[..text.LastIndexOf("    ribs:", StringComparison.Ordinal)];
        Assert.Contains("an air gap open to the outside lies where this corner would cross it", Only(withoutGrooves, "left side / sill"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_material_of_ones_own_cannot_be_called_hollow() =>
        Assert.Contains(VehicleFile.Read("materials:\n  - {key: hollow}", "x").Problems, problem => problem is { Line: 2, Column: 11 } && problem.What.Contains("write another, for instance my_hollow", StringComparison.Ordinal));
}
