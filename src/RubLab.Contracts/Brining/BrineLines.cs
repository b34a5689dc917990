using RubLab.Contracts.Formulas;
using RubLab.Core.Brining;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;

namespace RubLab.Contracts.Brining;

/// <summary>The lines of a liquid: those given, in proportion, and those free for a target.</summary>
internal sealed class BrineLines
{
    /// <summary>What the liquid is called in a finding.</summary>
    public const string Name = "the liquid";

    private const double KilogramGrams = 1000;

    private BrineLines(Formula formula, FormulaRatios ratios, IReadOnlyList<BrineGoal> goals)
    {
        Formula = formula;
        Goals = goals;
        Ingredients = formula.Lines.Select(l => l.Ingredient).ToList();
        Held = new double[formula.Lines.Count];
        Filling = new double[formula.Lines.Count];
        double given = 0;
        for (var i = 0; i < Held.Length; i++)
        {
            var line = formula.Lines[i];
            if (IsSolved(i))
            {
                continue;
            }

            if (formula.Mode == AuthoringMode.PercentOfLiquid && !line.IsRest)
            {
                Held[i] = line.Amount / 100;
            }
            else
            {
                Filling[i] = ratios.Lines[i].RatioGramsPerKilogram.Typical;
                given += Filling[i];
            }
        }

        for (var i = 0; i < Filling.Length; i++)
        {
            Filling[i] /= given;
        }

        GivenGrams = formula.Mode == AuthoringMode.Amounts ? given : null;
    }

    public Formula Formula { get; }

    /// <summary>What lines are solved for, in the order of the targets.</summary>
    public IReadOnlyList<BrineGoal> Goals { get; }

    public IReadOnlyList<Ingredient> Ingredients { get; }

    /// <summary>Shares of the liquid that stay, 0 to 1.</summary>
    public double[] Held { get; }

    /// <summary>Proportions of the lines that fill the rest; they sum to 1.</summary>
    public double[] Filling { get; }

    /// <summary>The given lines together, where they were given as masses and volumes.</summary>
    public double? GivenGrams { get; }

    public bool IsSolved(int line) => Goals.Any(g => g.Line == line);

    /// <summary>All that is made of the given lines, once the shares are known; none where the lines are shares themselves.</summary>
    public double? TotalGrams(ReadOnlySpan<double> shares)
    {
        if (GivenGrams is not { } given)
        {
            return null;
        }

        var solved = 0.0;
        foreach (var goal in Goals)
        {
            solved += shares[goal.Line];
        }

        return given / (1 - solved);
    }

    /// <summary>The liquid with every target's line at a share; the given lines fill what is left.</summary>
    public Brine At(ReadOnlySpan<double> solved)
    {
        double left = 1;
        for (var i = 0; i < Held.Length; i++)
        {
            left -= Held[i];
        }

        foreach (var share in solved)
        {
            left -= share;
        }

        var shares = new double[Held.Length];
        for (var i = 0; i < shares.Length; i++)
        {
            shares[i] = Held[i] + (Filling[i] * left);
        }

        for (var k = 0; k < Goals.Count; k++)
        {
            shares[Goals[k].Line] = solved[k];
        }

        return Brine.Of(Ingredients, shares);
    }

    /// <summary>Reads lines and targets, noting every fault.</summary>
    public static BrineLines? Read(BrineRequest request, FormulaKind kind, Catalogue catalogue, FindingLog findings, Place at)
    {
        var before = at.Log.Count;
        var drafts = FormulaReader.ReadLines(request.Lines, kind, catalogue, at.At("lines"));
        var goals = BrineGoals.Read(request.Targets, drafts, catalogue, at.At("targets"));

        // A free line stands in the formula with nothing, written as the other lines are.
        var unit = drafts.FirstOrDefault(d => d.Unit is not null)?.Unit ?? UnitTable.Get("%-of-liquid");
        if (unit.Dimension == Dimension.Volume)
        {
            unit = UnitTable.Get("g");
        }

        foreach (var goal in goals)
        {
            drafts[goal.Line] = drafts[goal.Line] with { Amount = 0, Unit = unit, IsAmountLeftOut = false };
        }

        // Only the lines' proportions are asked for: for amounts they come out as grams on a kilogram, for shares of a kilogram.
        var isAmounts = unit.Dimension == Dimension.Mass;
        var formula = Formula.Create(
            new FormulaDraft
            {
                Name = Name,
                Kind = kind,
                Base = RatioBase.Green,
                Dose = isAmounts ? null : KilogramGrams,
                DoseUnit = isAmounts ? null : UnitTable.Get("g/kg"),
                WrittenForGrams = KilogramGrams,
                WrittenForIs = WeightBasis.Green,
                Lines = drafts,
            },
            at);
        if (formula is null || at.Log.Count > before)
        {
            return null;
        }

        var ratios = FormulaRatios.Of(formula, catalogue, findings, "");
        MixFindings.Notice(ratios, null, catalogue, findings, "");
        return new BrineLines(formula, ratios, goals);
    }
}
