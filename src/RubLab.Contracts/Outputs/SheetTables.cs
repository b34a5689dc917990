using RubLab.Contracts.Reading;
using RubLab.Contracts.Scaling;
using RubLab.Core.Faults;

namespace RubLab.Contracts.Outputs;

/// <summary>The tables of a batch sheet as CSV (RFC 4180).</summary>
public static class SheetTables
{
    /// <summary>The words a table is asked for with.</summary>
    public static Words<SheetTable> All { get; } = new(("pieces", SheetTable.Pieces), ("lines", SheetTable.Lines));

    /// <summary>Reads which table is asked for; one that the sheet would not hold is noted as a fault.</summary>
    /// <param name="word">As asked; none if null.</param>
    /// <param name="request">The sheet that is asked for.</param>
    /// <param name="at">Where the word stands.</param>
    public static SheetTable? Read(string? word, BatchSheetRequest request, Place at)
    {
        var table = All.Read(word, at);
        if (table is null)
        {
            return null;
        }

        if (request.Purpose == Vocabulary.Purposes[SheetPurpose.Check])
        {
            at.Fault("no-table", "A check has no amounts and so no table: leave out either table or the purpose.");
        }
        else if (table == SheetTable.Pieces && request.Pieces == Vocabulary.Listings[PieceListing.None])
        {
            at.Fault("no-table", "pieces is none, so there is no table of pieces: ask for all of them, or for the table lines.");
        }

        return table;
    }

    /// <summary>The table's records, header first, each with its line end; made as they are read.</summary>
    public static IEnumerable<string> Records(BatchSheetResponse sheet, SheetTable table) =>
        table == SheetTable.Pieces ? PieceTable.Records(sheet) : LineTable.Records(sheet);
}
