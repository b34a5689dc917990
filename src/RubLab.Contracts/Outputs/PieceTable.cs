using RubLab.Contracts.Scaling;

namespace RubLab.Contracts.Outputs;

/// <summary>One record for each piece and treatment.</summary>
internal static class PieceTable
{
    public static IEnumerable<string> Records(BatchSheetResponse sheet)
    {
        var weight = new MassColumn("green_weight", sheet.GreenWeight.Unit);
        var amount = new MassColumn("amount", sheet.Treatments is [var first, ..] ? first.OnMeat.Unit : sheet.GreenWeight.Unit);
        var record = new CsvRecord();
        yield return record.Text("number").Text("line").Text("label").Text(weight.Heading)
            .Text("treatment_number").Text("treatment").Text(amount.Heading).End();
        for (var i = 0; i < sheet.Treatments.Count; i++)
        {
            var treatment = sheet.Treatments[i];
            foreach (var piece in treatment.Pieces ?? [])
            {
                yield return record
                    .Number(piece.Number).Text(piece.Line).Text(piece.Label).Number(weight.Of(piece.GreenWeight))
                    .Number(i + 1).Text(treatment.Name).Number(amount.Of(piece.Amount)).End();
            }
        }
    }
}
