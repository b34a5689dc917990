using RubLab.Contracts.Reading;
using RubLab.Contracts.Scaling;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Quantities;

namespace RubLab.Contracts.Shopping;

/// <summary>Sums what several batch sheets weigh out, by ingredient and form.</summary>
internal sealed class MixTotals(Catalogue catalogue)
{
    private readonly Dictionary<(string Ingredient, string Form), MixTotal> _totals = [];

    /// <summary>In the order the sheets first name them.</summary>
    public List<MixTotal> All { get; } = [];

    /// <summary>Of the sheets that were sent.</summary>
    public long PieceCount { get; private set; }

    /// <summary>Of the sheets that were sent.</summary>
    public double GreenGrams { get; private set; }

    /// <summary>Computes the sheets and adds them; a sheet's faults are noted under its place.</summary>
    public void Add(IReadOnlyList<BatchSheetRequest?>? sheets, FormulaLookup formulas, Place at)
    {
        if (sheets?.Count > ShoppingLists.MostSheets)
        {
            at.Fault(
                "too-many", $"At most {ShoppingLists.MostSheets} batch sheets; these are {sheets.Count}.",
                ("most", (double)ShoppingLists.MostSheets), ("count", (double)sheets.Count));
            return;
        }

        for (var i = 0; i < sheets?.Count; i++)
        {
            if (sheets[i] is { } sheet)
            {
                Add(sheet, formulas, at.At(i));
            }
            else
            {
                Reader.Missing(at.At(i));
            }
        }
    }

    private void Add(BatchSheetRequest request, FormulaLookup formulas, Place at)
    {
        // The pieces are not on the list; a word that is none is told all the same.
        var asked = request.Pieces == Vocabulary.Listings[PieceListing.All] ? request with { Pieces = null } : request;
        var result = BatchSheets.Compute(asked, catalogue, formulas);
        if (!result.IsGood)
        {
            foreach (var fault in result.Log.Faults)
            {
                fault.NoteAt(fault.Pointer.Split('/').Skip(1).Aggregate(at, (place, part) => place.At(part)));
            }

            return;
        }

        if (request.Purpose == Vocabulary.Purposes[SheetPurpose.Check])
        {
            at.At("purpose").Fault("unknown-word", "A check weighs nothing out: leave purpose out, or say sheet.", ("value", request.Purpose), ("allowed", new[] { "sheet" }));
            return;
        }

        GreenGrams += UnitTable.Get(result.Value.GreenWeight.Unit).ToBase(result.Value.GreenWeight.Value);
        PieceCount += request.Pile!.Sum(line => line!.Pieces?.Count ?? line.Count ?? 0);
        Add(result.Value);
    }

    /// <summary>Adds the mixes of a computed sheet.</summary>
    public void Add(BatchSheetResponse sheet)
    {
        foreach (var line in sheet.Treatments.SelectMany(t => t.Lines))
        {
            if (!_totals.TryGetValue((line.Ingredient, line.Form), out var total))
            {
                total = _totals[(line.Ingredient, line.Form)] = new MixTotal(line.Ingredient, line.Form);
                All.Add(total);
            }

            total.Grams += UnitTable.Get(line.ToMix.Unit).ToBase(line.ToMix.Value);
        }
    }
}
