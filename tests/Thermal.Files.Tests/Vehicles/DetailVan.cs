namespace Thermal.Files.Tests.Vehicles;

/// <summary>A vehicle file with every way to tell a rib, a bolt and an edge; drawn for tests, and no vehicle anyone would build.</summary>
internal static class DetailVan
{
    internal const string Text = """
        format: 1
        name: van of details
        site: {cold_night: {outside: -10 °C}}
        people: {sleepers: 2}
        heater: {class: diesel_air_small}
        body: {length: 4 m, width: 2 m, height: 2 m}
        zones:
          - {name: living, kind: living}
        surfaces:
          - name: left side
            place: left
            zone: living
            outside: air
            layers:
              - {material: birch_plywood, thickness: 6 mm}
              - {material: xps, thickness: 60 mm}
              - {material: steel_sheet, thickness: 1 mm}
            lining: bonded
            ribs:
              - {name: side ribs, shape: hat, sheet: 1.2 mm, depth: 45 mm, crown: 40 mm, foot: 20 mm, spacing: 500 mm, length: 16 m}
              - name: filled hats
                shape: hat
                material: stainless_steel
                sheet: 0.8 mm
                depth: 36 mm
                crown: 50 mm
                foot: 0 mm
                inside: sheep_wool
                over: {material: elastomeric_foam, thickness: 6 mm, width: 80 mm}
                length: 3 m
              - {name: zeds, shape: zed, material: aluminium, sheet: 2 mm, depth: 40 mm, flange: 25 mm, foot: 30 mm, length: 2 m}
              - {name: channels, shape: channel, sheet: 1.5 mm, depth: 66 mm, flange: 35 mm, foot: 35 mm, bare: true, length: 2.5 m}
              - {name: tubes, shape: box, sheet: 2 mm, depth: 30 mm, width: 20 mm, inside: hollow, inside_emissivity: 0.3, length: 1 m}
              - {name: flats, shape: plate, sheet: 4 mm, depth: 50 mm, over: {material: softwood, thickness: 10 mm}, length: 1 m}
              - {name: timber, shape: batten, material: softwood, width: 45 mm, depth: 60 mm, length: 6 m}
              - {name: top edge, shape: corner, with: roof, length: 4 m}
              - {name: sill, shape: corner, with: floor, sheet: 2 mm, leg: 40 mm, material: galvanised_steel, length: 4 m}
              - {name: rib of a data sheet, psi: 0.15 W/(m·K), length: 2 m, coldest_factor: 0.7, mould_factor: 0.6, given_for: "birch_plywood 6 mm, xps 60 mm, steel_sheet 1 mm"}
            bolts:
              - {name: rail bolts, diameter: 8 mm, head: 24 mm, head_thickness: 7 mm, outer_head: 30 mm, layers_over: 1, material: stainless_steel, count: 12}
              - {name: rivets, diameter: 5 mm, count: 40}
              - {name: bolt of a data sheet, chi: 0.01 W/K, count: 3, given_for: "birch_plywood 6 mm, xps 60 mm, steel_sheet 1 mm"}
            openings:
              - name: window
                width: 900 mm
                height: 450 mm
                glazing: [{pane: acrylic, thickness: 3 mm}, {gap: air, thickness: 20 mm}, {pane: acrylic, thickness: 3 mm}]
                edge: {shape: frame, depth: 30 mm, width: 40 mm, lip: 15 mm, gap: 5 mm}
              - name: door
                width: 700 mm
                height: 1800 mm
                leaf: [{material: poplar_plywood, thickness: 5 mm}, {material: xps, thickness: 30 mm}, {material: steel_sheet, thickness: 1 mm}]
                edge: {shape: door, sheet: 1.5 mm, post: 60 mm, depth: 30 mm, seal: 12 mm, inside: elastomeric_foam}
          - name: roof
            place: roof
            zone: living
            outside: air
            layers: [{material: poplar_plywood, thickness: 5 mm}, {material: xps, thickness: 40 mm}, {material: steel_sheet, thickness: 0.8 mm}]
            lining: bonded
          - name: floor
            place: floor
            zone: living
            outside: road
            layers: [{material: birch_plywood, thickness: 12 mm}, {material: xps, thickness: 30 mm}, {material: steel_sheet, thickness: 1 mm}]
            lining: taped
            ribs:
              - {name: grooves, shape: corrugation, depth: 8 mm, groove: 40 mm, spacing: 120 mm, length: 60 m}
        """;
}
