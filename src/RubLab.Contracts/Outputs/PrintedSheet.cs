using RubLab.Contracts.Quantities;
using RubLab.Contracts.Scaling;
using RubLab.Core.Catalogues;

namespace RubLab.Contracts.Outputs;

/// <summary>A batch sheet as an HTML document to print: a page for each treatment, then salt and remarks.</summary>
/// <remarks>It is well-formed XML too. Parts are made as they are read, so that a long sheet never stands in memory.</remarks>
public static class PrintedSheet
{
    public static IEnumerable<string> Parts(BatchSheetResponse sheet, Catalogue catalogue)
    {
        yield return $"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8"/>
            <meta name="viewport" content="width=device-width, initial-scale=1"/>
            <title>{Html.Text(Title(sheet))}</title>
            <style>{PrintedStyle.Css}</style>
            </head>
            <body>
            <header>
            <h1>{Html.Text(Title(sheet))}</h1>
            <p>{Quantity(sheet.GreenWeight)} of meat, green. {Status(sheet)}</p>
            </header>
            <main>

            """;
        for (var i = 0; i < sheet.Treatments.Count; i++)
        {
            foreach (var part in PrintedTreatment.Parts(sheet.Treatments[i], i + 1, catalogue))
            {
                yield return part;
            }
        }

        yield return "<section aria-labelledby=\"salt\">\n<h2 id=\"salt\">Salt</h2>\n";
        foreach (var line in sheet.Salt)
        {
            yield return PrintedSalt.Of(line, catalogue);
        }

        yield return PrintedRemarks.Of(sheet.Findings, sheet.Cautions);
        yield return $"""
            </section>
            </main>
            <footer>Reference data {Html.Text(sheet.DataVersion)}.</footer>
            </body>
            </html>

            """;
    }

    /// <summary>A quantity in text.</summary>
    internal static string Quantity(Quantity quantity) => $"{PlainNumber.Of(quantity.Value)} {quantity.Unit}";

    /// <summary>A ratio in text, to four significant digits.</summary>
    internal static string Ratio(Quantity ratio) => $"{PlainNumber.Readable(ratio.Value)} {ratio.Unit}";

    /// <summary>A band in text: its typical value, and its ends where they differ.</summary>
    internal static string Band(QuantityBand band) => band.Low == band.High
        ? $"{PlainNumber.Of(band.Typical)} {band.Unit}"
        : $"{PlainNumber.Of(band.Typical)} {band.Unit} ({PlainNumber.Of(band.Low)} to {PlainNumber.Of(band.High)})";

    private static string Title(BatchSheetResponse sheet) => sheet.Treatments.Count == 0
        ? "Check before weighing"
        : "Batch sheet: " + string.Join(", ", sheet.Treatments.Select(t => t.Name).Distinct());

    private static string Status(BatchSheetResponse sheet) => (sheet.Treatments.Count, sheet.Status) switch
    {
        (0, _) => "A check: there is nothing to weigh on it.",
        (_, "planned") => "Planned: a trim loss is assumed, so weigh the trimmed meat before you mix.",
        _ => "Weighed.",
    };
}
