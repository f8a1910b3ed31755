using Thermal.Assessments;

namespace Thermal.Files.Tests.Vehicles;

/// <summary>The built-in vehicles are read without a problem and survive being written.</summary>
public sealed class BuiltInTests
{
    public static TheoryData<string> Names => [.. VehicleLibrary.Names];

    [Theory, MemberData(nameof(Names))]
    public void Every_built_in_vehicle_is_read_without_a_problem(string name) =>
        Assert.Empty(VehicleFile.Read(VehicleLibrary.Text(name)!, name).Problems);

    [Theory, MemberData(nameof(Names))]
    public void Written_then_read_gives_the_same_vehicle(string name)
    {
        Case first = VehicleLibrary.Find(name)!;
        string text = VehicleFile.Write(first);
        Reading<Case> again = VehicleFile.Read(text, name);
        Assert.Empty(again.Problems);
        Assert.Equal(Described.Of(first), Described.Of(again.Value!));
        Assert.Equal(text, VehicleFile.Write(again.Value!));
    }
}
