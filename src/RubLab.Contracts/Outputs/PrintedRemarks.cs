using RubLab.Contracts.Remarks;

namespace RubLab.Contracts.Outputs;

/// <summary>What was noticed, and what must be said for safety with whose word counts.</summary>
internal static class PrintedRemarks
{
    public static string Of(IReadOnlyList<FindingResponse> findings, IReadOnlyList<CautionResponse> cautions) =>
        List("Noticed", findings.Select(f => $"<strong>{Severity(f.Severity)}:</strong> {Html.Text(f.Message)}{Source(f.SourceId)}"))
        + List("For safety", cautions.Select(c => $"{Html.Text(c.Text)} Whose word counts: {Html.Text(c.DefersTo)}.{Source(c.SourceId)}"));

    private static string List(string heading, IEnumerable<string> items)
    {
        var rows = string.Join('\n', items.Select(i => $"<li>{i}</li>"));
        return rows.Length == 0 ? "" : $"<h3>{heading}</h3>\n<ul class=\"remarks\">\n{rows}\n</ul>\n";
    }

    private static string Severity(string severity) => severity switch
    {
        "danger" => "Danger",
        "warning" => "Warning",
        "advice" => "Advice",
        _ => "Note",
    };

    private static string Source(string? id) => string.IsNullOrEmpty(id) ? "" : $" <span class=\"source\">({Html.Text(id)})</span>";
}
