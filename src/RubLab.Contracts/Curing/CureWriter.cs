using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Contracts.Remarks;
using RubLab.Contracts.Salt;
using RubLab.Contracts.Scaling;
using RubLab.Core.Catalogues;
using RubLab.Core.Curing;
using RubLab.Core.Formulas;
using RubLab.Core.Meat;
using RubLab.Core.Remarks;
using RubLab.Core.Salt;
using RubLab.Core.Scaling;

namespace RubLab.Contracts.Curing;

/// <summary>Writes the answer for a cure.</summary>
internal static class CureWriter
{
    private const double KilogramGrams = 1000;

    public static CureResponse Write(
        CureReader read, TreatmentSheet sheet, SaltLedger ledger, IReadOnlyList<AdditiveLoad> loads, IReadOnlyList<LimitCheck> limits,
        Catalogue catalogue, FindingLog findings)
    {
        var checks = SaltLedgerResponse.From(ledger, limits, catalogue, findings, "/cut").Checks;
        return new CureResponse
        {
            Method = Vocabulary.CureMethods[read.Method],
            Lines = read.Formula.Lines.Select((_, i) => LineOf(i, read, sheet)).ToList(),
            Reached = loads.Where(l => CureGoal.Additives.Contains(l.Additive)).Select(l => ReachedOf(l, catalogue)).ToList(),
            SaltPerKgGreen = QuantityBand.From(ledger.SaltGramsPerKilogramGreen, "g/kg", Rounded.Ledger),
            SodiumPerKgGreen = QuantityBand.From(ledger.AddedSodiumGramsPerKilogramGreen, "g/kg", Rounded.Ledger),
            Checks = checks,
            Findings = FindingResponse.From(findings),
            Cautions = CautionsOf(read, catalogue),
            DataVersion = catalogue.Version,
        };
    }

    private static CureLineResponse LineOf(int index, CureReader read, TreatmentSheet sheet)
    {
        var line = read.Formula.Lines[index];
        var exact = line.Amount * read.Meat.WeighedGrams[0] / KilogramGrams;
        var weighed = read.Purpose == SheetPurpose.Sheet ? sheet.Lines[index] : (LineAmount?)null;
        return new CureLineResponse
        {
            Ingredient = line.Ingredient.Id,
            Form = line.Form.Id,
            Ratio = new Quantity(Rounded.Exact(line.Amount), "g/kg"),
            Exact = new Quantity(Rounded.Exact(exact), "g"),
            Weighed = weighed is { } amount ? new Quantity((double)amount.Value, amount.Step.Unit.Symbol) : null,
            ErrorPercent = weighed is { } taken && exact > 0 ? Rounded.Ledger(((taken.Grams / exact) - 1) * 100) + 0.0 : null,
            IsSolved = read.Goals.Any(g => g.Line == index),
        };
    }

    private static CureReachedResponse ReachedOf(AdditiveLoad load, Catalogue catalogue)
    {
        var ppm = load.PartsPerMillion.Typical;
        return new CureReachedResponse(
            load.Additive, Ppm(ppm), new Quantity(Rounded.Exact(ppm / KilogramGrams), "g/kg"),
            load.Additive == AdditiveLoads.Nitrite ? Ppm(ppm * catalogue.Constants.PotassiumPerSodiumNitrite) : null);
    }

    // Put on or mixed in: what is pumped or soaked in is a brine.
    private static IReadOnlyList<CautionResponse> CautionsOf(CureReader read, Catalogue catalogue) => new CautionSubject(
        [FormulaKind.DryBrine], [.. read.Formula.Lines.Select(l => l.Ingredient)], [(GroundProducts.ClassOf(read.Meat.Cut, read.Meat.Product), false)]).Cautions(catalogue);

    private static Quantity Ppm(double ppm) => new(Rounded.Ledger(ppm), "ppm");
}
