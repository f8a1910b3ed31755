using Thermal.Assessments;
using Thermal.Charts;
using Thermal.Cli.Json;
using Thermal.Files;
using Thermal.Reports;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Cli.Commands;

/// <summary>Computes a rib or bolt that belongs to no vehicle.</summary>
internal static class LooseDetailRun
{
    internal static int Run(LooseDetailText text, string? folder, bool json, Figures figures, Terminal terminal)
    {
        Reading<LooseDetail> reading = LooseDetail.Read(text);
        if (reading.Value is not { } loose)
            return Refusal.Of(reading.Problems, terminal);
        BridgeAnswer found = DetailAlone.Of(DetailNames.Of(loose.Detail), text.Stands, loose.Detail, loose.Place, loose.InsideC, loose.RelativeHumidityFraction, loose.OutsideC);
        if (folder is not null && PictureFiles.WriteOrRefuse(folder, DetailPictures.Of(Drawn(found, text.Stands), figures), terminal) is null)
            return ExitCode.Refused;
        string answer = BridgeWords.AnswerAlone(found, figures);
        if (json)
            JsonText.Write(terminal.Answers, top => DetailJson.One(top, null, found, answer, null, null, figures));
        else
        {
            DetailPrint.One(found, answer, null, null, figures, terminal);
            PictureFiles.Tell(folder, terminal);
        }
        return ExitCode.Computed;
    }

    private static SectionOnNight Drawn(BridgeAnswer found, string stands) => new()
    {
        Name = found.Name,
        Panel = found.Panel,
        Attitude = stands switch { "roof" => Attitude.Roof, "floor" => Attitude.Floor, _ => Attitude.OutsideRight },
        Solved = found.Solved!,
        InsideC = found.InsideC,
        OutsideC = found.OutsideC,
        DewPointC = found.DewPointC,
        InsideName = "room",
        OutsideName = "outside",
    };
}
