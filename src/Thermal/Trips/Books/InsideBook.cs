using Thermal.Trips.Damp;
using Thermal.Trips.Heat;

namespace Thermal.Trips.Books;

/// <summary>Water inside the build-ups towards the outside, by the hour.</summary>
internal sealed class InsideBook
{
    private readonly Body body;
    private readonly BuildUpAccount[] accounts;
    private readonly double[] most;
    private readonly int[] mostFace;
    private readonly DateTime[] mostAt;

    /// <param name="body">The vehicle's faces.</param>
    /// <param name="accounts">Accounts of its build-ups; those between two rooms are left out.</param>
    internal InsideBook(Body body, IReadOnlyList<BuildUpAccount> accounts)
    {
        this.body = body;
        this.accounts = [.. accounts.Where(account => account.OtherRoom < 0)];
        (most, mostFace, mostAt) = (new double[this.accounts.Length], new int[this.accounts.Length], new DateTime[this.accounts.Length]);
    }

    /// <summary>Takes in an hour that was closed.</summary>
    /// <param name="endLocal">Its end.</param>
    internal void Close(DateTime endLocal)
    {
        for (int i = 0; i < accounts.Length; i++)
        {
            double held = accounts[i].HeldKg / accounts[i].AreaM2;
            if (held > most[i]) (most[i], mostFace[i], mostAt[i]) = (held, Fullest(accounts[i]), endLocal);
        }
    }

    /// <summary>The build-ups, most water at once first.</summary>
    /// <param name="startLocal">Stands for the time of those that stayed dry.</param>
    internal IReadOnlyList<BuildUpTrip> BuildUps(DateTime startLocal) => [.. accounts.Select((account, i) =>
    {
        Part part = body.Parts[account.PartIndex];
        double[] faces = new double[part.Layers!.Layers.Count + 1];
        account.AtFaces(faces);
        return new BuildUpTrip(part.Name, account.AreaM2, [.. faces.Select(held => 1000 * held)], 1000 * most[i], most[i] > 0 ? mostAt[i] : startLocal, mostFace[i],
            1000 * account.HeldKg / account.AreaM2, 1000 * account.ByAirKgPerM2, 1000 * account.ByDiffusionKgPerM2);
    }).OrderByDescending(buildUp => buildUp.MostGPerM2)];

    private int Fullest(BuildUpAccount account)
    {
        Span<double> faces = stackalloc double[body.Parts[account.PartIndex].Layers!.Layers.Count + 1];
        account.AtFaces(faces);
        int fullest = 0;
        for (int face = 1; face < faces.Length; face++)
            if (faces[face] > faces[fullest]) fullest = face;
        return fullest;
    }
}
