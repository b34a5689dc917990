using RubLab.Contracts.Salt;
using RubLab.Contracts.Scaling;
using RubLab.Core.Catalogues;

namespace RubLab.Contracts.Outputs;

/// <summary>The salt of one pile line, with its band and what ranges say about it.</summary>
internal static class PrintedSalt
{
    public static string Of(LineLedgerResponse line, Catalogue catalogue)
    {
        var ledger = line.Ledger;
        var cooked = ledger.SaltPerKgCooked is { } perCooked ? $"<p>Cooked: {PrintedSheet.Band(perCooked)}.</p>\n" : "";
        var portion = ledger.SodiumPerPortion is { } sodium ? $"<p>Sodium in a portion: {PrintedSheet.Band(sodium)}.</p>\n" : "";
        return $"""
            <h3>{Html.Text(LineNames.Of(line.Line, catalogue))}</h3>
            <p>Salt on green meat: <strong>{PrintedSheet.Band(ledger.SaltPerKgGreen)}</strong>; on the scale {PrintedSheet.Ratio(ledger.SaltWeighedPerKgGreen)}.</p>
            {cooked}{portion}{Checks(line)}
            """;
    }

    private static string Checks(LineLedgerResponse line) => line.Ledger.Checks.Count == 0
        ? "<p>There is no range to hold this against.</p>\n"
        : $"""
            <table class="remarks">
            <caption>Held against ranges</caption>
            <thead><tr><th scope="col">Range</th><th scope="col">Here</th><th scope="col">Verdict</th></tr></thead>
            <tbody>
            {string.Join('\n', line.Ledger.Checks.Select(Row))}
            </tbody>
            </table>

            """;

    private static string Row(CheckResponse check)
    {
        var measured = check.Measured is { } band ? PrintedSheet.Band(band) : "not known";
        return $"""<tr><th scope="row">{Html.Text(check.Title)}: {Range(check)}, {Html.Text(check.Base)} <span class="source">{Html.Text($"({check.SourceId}, {check.Locator}; confidence {check.Confidence.Replace('-', ' ')})")}</span></th><td>{measured}</td><td>{Verdict(check)}. {Html.Text(check.Advice)}</td></tr>""";
    }

    private static string Range(CheckResponse check) => (check.Lowest, check.Highest) switch
    {
        ({ } low, { } high) when low == high => $"{PlainNumber.Of(low)} {check.Unit}",
        ({ } low, { } high) => $"{PlainNumber.Of(low)} to {PlainNumber.Of(high)} {check.Unit}",
        ({ } low, null) => $"at least {PlainNumber.Of(low)} {check.Unit}",
        (null, { } high) => $"at most {PlainNumber.Of(high)} {check.Unit}",
        _ => check.Unit,
    };

    // Of a band that reaches past a bound, its typical value is told too.
    private static string Verdict(CheckResponse check) => check.Verdict == "cannot-tell" && check.Measured is not null
        ? $"Cannot tell; typically {Words(check.TypicalVerdict, check)}"
        : Capital(Words(check.Verdict, check));

    private static string Words(string verdict, CheckResponse check)
    {
        var isOneLevel = check.Lowest is not null && check.Lowest == check.Highest;
        return verdict switch
        {
            "within" => isOneLevel ? "at the level" : "within the range",
            "below" => isOneLevel ? "below the level" : "below the range",
            "above" => isOneLevel ? "above the level" : "above the range",
            _ => "cannot tell",
        };
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
