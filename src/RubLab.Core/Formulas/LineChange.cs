using RubLab.Core.Catalogues;
using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;

namespace RubLab.Core.Formulas;

/// <summary>Changes one line of a formula, and says what that does to the rest.</summary>
public static class LineChange
{
    /// <summary>A new amount on a line, in the line's own unit; the dose or the salt is held.</summary>
    /// <returns>The changed formula; none when the salt cannot be held because the mix has or would have none, and
    /// none when nothing would be left for the line that makes up the rest.</returns>
    /// <exception cref="ArgumentException">The amount is negative or not finite, or leaves every line at zero.</exception>
    public static Formula? WithAmount(Formula formula, int line, double amount, HoldOnChange hold, Catalogue catalogue)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(amount);
        if (!double.IsFinite(amount))
        {
            throw new ArgumentOutOfRangeException(nameof(amount), amount, "An amount is finite.");
        }

        if (amount == 0 && !formula.Lines.Where((l, i) => i != line && l.Amount > 0).Any())
        {
            throw new ArgumentException("A mix has something in it.", nameof(amount));
        }

        var lines = RestLine.MadeUp(Replaced(formula.Lines, line, formula.Lines[line] with { Amount = amount }), formula.Mode);
        return lines is null ? null : Held(formula, formula with { Lines = lines }, hold, catalogue);
    }

    /// <summary>Another form on a line. A change of grind changes the volume, not the mass.</summary>
    public static Formula? WithForm(Formula formula, int line, IngredientForm form, Catalogue catalogue)
    {
        var old = formula.Lines[line];
        var isByVolume = formula.Mode == AuthoringMode.PartsByVolume || old.Unit.Dimension == Dimension.Volume;
        var amount = old.Amount;
        if (isByVolume)
        {
            if (form.Density is not { } density || Before(formula, catalogue).Lines[line].Density is not { } was)
            {
                return null;
            }

            amount *= was.GramsPerMillilitre.Typical / density.GramsPerMillilitre.Typical;
        }

        return formula with { Lines = Replaced(formula.Lines, line, old with { NamedForm = form, Amount = amount }) };
    }

    private static Formula? Held(Formula before, Formula changed, HoldOnChange hold, Catalogue catalogue)
    {
        var was = Before(before, catalogue);
        if (hold == HoldOnChange.Dose)
        {
            return Dosed(changed, was.DoseGramsPerKilogram, catalogue);
        }

        var saltShare = Before(changed with { Dose = was.DoseGramsPerKilogram }, catalogue).SaltSharePercent.Typical;
        return saltShare > 0 && was.SaltSharePercent.Typical > 0
            ? Dosed(changed, was.DoseGramsPerKilogram * was.SaltSharePercent.Typical / saltShare, catalogue)
            : null;
    }

    // A dose stands on green weight. An old card for meat as bought keeps its own weight of meat instead, so that it
    // goes on standing on meat as bought.
    private static Formula Dosed(Formula formula, double dose, Catalogue catalogue)
    {
        if (formula is { Dose: null, WrittenForIs: WeightBasis.Purchase, WrittenForGrams: { } weight, Mode: AuthoringMode.Amounts })
        {
            return formula with { WrittenForGrams = weight * Before(formula, catalogue).DoseGramsPerKilogram / dose };
        }

        return formula with { Dose = dose };
    }

    private static FormulaRatios Before(Formula formula, Catalogue catalogue) =>
        FormulaRatios.Of(formula, catalogue, new FindingLog(catalogue), "");

    private static List<FormulaLine> Replaced(IReadOnlyList<FormulaLine> lines, int index, FormulaLine line)
    {
        var all = lines.ToList();
        all[index] = line;
        return all;
    }
}
