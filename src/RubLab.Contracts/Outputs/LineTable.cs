using RubLab.Contracts.Scaling;

namespace RubLab.Contracts.Outputs;

/// <summary>One record for each formula line and treatment.</summary>
internal static class LineTable
{
    private const string PerKilogram = "g/kg";

    public static IEnumerable<string> Records(BatchSheetResponse sheet)
    {
        var unit = sheet.Treatments is [var first, ..] ? first.ToMix.Unit : sheet.GreenWeight.Unit;
        var toMix = new MassColumn("to_mix", unit);
        var running = new MassColumn("running_total", unit);

        // By weight and by surface do not fit one column; hardly any sheet has both.
        var ratios = sheet.Treatments.SelectMany(t => t.Lines).Select(l => l.Ratio.Unit).Distinct().Order(StringComparer.Ordinal).DefaultIfEmpty(PerKilogram).ToList();
        var record = new CsvRecord();
        record.Text("treatment_number").Text("treatment").Text("ingredient").Text("form");
        foreach (var ratio in ratios)
        {
            record.Text("ratio_" + ratio.Replace("/", "_per_", StringComparison.Ordinal));
        }

        yield return record.Text(toMix.Heading).Text(running.Heading).Text("spoon").End();
        for (var i = 0; i < sheet.Treatments.Count; i++)
        {
            foreach (var line in sheet.Treatments[i].Lines)
            {
                record.Number(i + 1).Text(sheet.Treatments[i].Name).Text(line.Ingredient).Text(line.Form);
                foreach (var ratio in ratios)
                {
                    _ = ratio == line.Ratio.Unit ? record.Number(line.Ratio.Value) : record.Empty();
                }

                yield return record.Number(toMix.Of(line.ToMix)).Number(running.Of(line.RunningTotal)).Text(line.Spoon?.Text).End();
            }
        }
    }
}
