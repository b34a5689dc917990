using RubLab.Core.Remarks;

namespace RubLab.Core.Catalogues;

/// <summary>Reads the texts of findings and cautions.</summary>
internal static class RemarkTables
{
    public static List<FindingText> ReadFindings(IReadOnlyDictionary<string, string> files) =>
        SeedTable.Read(files, "findings.csv").Rows.ConvertAll(row => new FindingText(
            row.Required("code"),
            row.Required("severity") switch
            {
                "info" => Severity.Info,
                "advice" => Severity.Advice,
                "warning" => Severity.Warning,
                "danger" => Severity.Danger,
                _ => throw row.Wrong("severity", "is not a severity"),
            },
            row.Required("title"), row.Required("message"), row.Required("cause"), row.Required("cure"), row.Required("source_id")));

    public static List<Caution> ReadCautions(IReadOnlyDictionary<string, string> files) =>
        SeedTable.Read(files, "cautions.csv").Rows.ConvertAll(row => new Caution(
            row.Required("caution_id"), row.Required("text"), row.Required("applies_to"), row.Required("defers_to"), row.Required("source_id")));
}
