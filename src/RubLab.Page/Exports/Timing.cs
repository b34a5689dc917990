using System.Runtime.InteropServices.JavaScript;
using RubLab.Contracts.Outputs;
using RubLab.Contracts.Timing;
using RubLab.Core.Faults;

namespace RubLab.Page.Exports;

/// <summary>How far salt gets, for the page's script.</summary>
public static partial class Timing
{
    // The pictures of an answer are asked for right after it.
    private static (string Request, Result<SaltingAnswer> Result)? _last;

    /// <summary>Computes what <c>POST /v1/salting-times</c> would answer.</summary>
    /// <returns><c>{"ok": answer}</c> or <c>{"errors": [...]}</c>.</returns>
    [JSExport]
    public static string Salting(string request) => Computation.Run(
        request, RequestJson.Default.SaltingTimesRequest, read => Respond(request, read), AnswerJson.Default.SaltingTimesResponse);

    /// <summary>The picture of the answer, as <c>POST /v1/salting-times?plot=</c> gives it, to stand inside the page.</summary>
    /// <param name="request">The last one given to <see cref="Salting"/>.</param>
    /// <param name="plot">profile or uptake.</param>
    /// <param name="isNarrow">For a phone held upright.</param>
    /// <exception cref="InvalidOperationException">It is not the last one, or was not answered.</exception>
    [JSExport]
    public static string Plot(string request, string plot, bool isNarrow) => _last is { } last && last.Request == request && last.Result.Value is { } answer
        ? SaltingPlots.ToEmbed(answer, plot == "uptake" ? SaltingPlot.Uptake : SaltingPlot.Profile, isNarrow)
        : throw new InvalidOperationException("Only the last answer is drawn.");

    private static Result<SaltingTimesResponse> Respond(string request, SaltingTimesRequest read)
    {
        var result = SaltingAnswers.Compute(read, Reference.Catalogue);
        _last = (request, result);
        return result.Log.ResultOf(result.IsGood ? result.Value.Response : null);
    }
}
