using Thermal.Assessments;
using Thermal.Cli.Json;
using Thermal.Files;
using Thermal.Words;
using Thermal.Words.Sentences;

namespace Thermal.Cli.Commands;

/// <summary>Computes a rib or bolt that belongs to no vehicle.</summary>
internal static class LooseDetailRun
{
    internal static int Run(LooseDetailText text, bool json, Figures figures, Terminal terminal)
    {
        Reading<LooseDetail> reading = LooseDetail.Read(text);
        if (reading.Value is not { } loose)
            return Refusal.Of(reading.Problems, terminal);
        BridgeAnswer found = DetailAlone.Of(DetailNames.Of(loose.Detail), text.Stands, loose.Detail, loose.Place, loose.InsideC, loose.RelativeHumidityFraction, loose.OutsideC);
        string answer = BridgeWords.AnswerAlone(found, figures);
        if (json)
            JsonText.Write(terminal.Answers, top => DetailJson.One(top, null, found, answer, null, null, figures));
        else
            DetailPrint.One(found, answer, null, null, figures, terminal);
        return ExitCode.Computed;
    }
}
