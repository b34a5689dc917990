using RubLab.Contracts.Outputs;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Scaling;

namespace RubLab.Contracts.Tests.Outputs;

/// <summary>Computed sheets to write out.</summary>
internal static class Sheets
{
    public static BatchSheetResponse First(string edits = "") => Document.FirstSheet().Edit(edits).Sheet().Value!;

    /// <summary>Two lines of pile, four treatments, tenths of a gram.</summary>
    public static BatchSheetResponse Full(string edits = "") => Document
        .Of(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Documents", "full-sheet.json"))).Edit(edits).Sheet().Value!;

    /// <summary>The first sheet with other names and one piece with this label.</summary>
    public static BatchSheetResponse Named(string treatment, string label)
    {
        var sheet = First();
        var piece = new SheetPieceResponse(1, "shoulders", label, new Quantity(3312, "g"), new Quantity(291, "g"));
        return sheet with { Treatments = [sheet.Treatments[0] with { Name = treatment, Pieces = [piece] }] };
    }

    public static string Csv(BatchSheetResponse sheet, SheetTable table) => string.Concat(SheetTables.Records(sheet, table));
}
