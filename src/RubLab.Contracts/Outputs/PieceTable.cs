using RubLab.Contracts.Quantities;
using RubLab.Contracts.Scaling;

namespace RubLab.Contracts.Outputs;

/// <summary>One record for each piece and treatment; with a column of target weights where something is injected.</summary>
internal static class PieceTable
{
    public static IEnumerable<string> Records(BatchSheetResponse sheet)
    {
        var weight = new MassColumn("green_weight", sheet.GreenWeight.Unit);
        var amount = new MassColumn("amount", sheet.Treatments is [var first, ..] ? first.OnMeat.Unit : sheet.GreenWeight.Unit);
        var target = sheet.Treatments.Any(t => t.AddedSolution is not null) ? new MassColumn("target_weight", sheet.GreenWeight.Unit) : null;
        var record = new CsvRecord();
        record.Text("number").Text("line").Text("label").Text(weight.Heading).Text("treatment_number").Text("treatment").Text(amount.Heading);
        yield return (target is null ? record : record.Text(target.Heading)).End();
        for (var i = 0; i < sheet.Treatments.Count; i++)
        {
            var treatment = sheet.Treatments[i];
            foreach (var piece in treatment.Pieces ?? [])
            {
                record.Number(piece.Number).Text(piece.Line).Text(piece.Label).Number(weight.Of(piece.GreenWeight))
                    .Number(i + 1).Text(treatment.Name).Number(amount.Of(piece.Amount));
                yield return (target is null ? record : Target(record, target, piece.TargetWeight)).End();
            }
        }
    }

    private static CsvRecord Target(CsvRecord record, MassColumn column, Quantity? weight) =>
        weight is { } full ? record.Number(column.Of(full)) : record.Empty();
}
