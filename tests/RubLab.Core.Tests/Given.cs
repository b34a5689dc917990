using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Ingredients;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Scaling;
using RubLab.Core.Sources;

namespace RubLab.Core.Tests;

/// <summary>What a test starts from: drafts, formulas, piles and made-up ingredients.</summary>
public static class Given
{
    public static readonly Citation NoSource = new("none", "made up for a test", Confidence.High);

    public static Ingredient Ingredient(string id) => Seed.Catalogue.TryFindIngredient(id, out var found)
        ? found
        : throw new ArgumentException($"No ingredient {id}.", nameof(id));

    public static Cut Cut(string id) => Seed.Catalogue.TryFindCut(id, out var found)
        ? found
        : throw new ArgumentException($"No cut {id}.", nameof(id));

    /// <summary>A line such as <c>("salt", "table", 1, "tbsp")</c>.</summary>
    public static FormulaLineDraft Line(string ingredient, string? form, double amount, string unit)
    {
        var found = Ingredient(ingredient);
        IngredientForm? named = null;
        if (form is not null)
        {
            Assert.True(found.TryFindForm(form, out named), $"{ingredient} has no form {form}.");
        }

        return new FormulaLineDraft(found, named, amount, UnitTable.Get(unit), null, null);
    }

    public static FormulaLineDraft Line(Ingredient ingredient, double amount, string unit) =>
        new(ingredient, ingredient.DefaultForm, amount, UnitTable.Get(unit), null, null);

    /// <summary>The line of a liquid that leaves out its amount.</summary>
    public static FormulaLineDraft Rest(string ingredient) => new(Ingredient(ingredient), null, null, null, null, null, IsAmountLeftOut: true);

    public static FormulaDraft Liquid(params FormulaLineDraft[] lines) => Draft(lines) with { Kind = FormulaKind.Injection };

    public static FormulaDraft Draft(params FormulaLineDraft[] lines) => new()
    {
        Name = "A mix",
        Kind = FormulaKind.Rub,
        Base = RatioBase.Green,
        Dose = null,
        DoseUnit = null,
        WrittenForGrams = null,
        WrittenForIs = WeightBasis.Green,
        Lines = lines,
    };

    public static FormulaDraft Dosed(this FormulaDraft draft, double dose, string unit = "g/kg") =>
        draft with { Dose = dose, DoseUnit = UnitTable.Get(unit) };

    public static FormulaDraft WrittenFor(this FormulaDraft draft, double value, string unit, WeightBasis basis = WeightBasis.Green) =>
        draft with { WrittenForGrams = UnitTable.Get(unit).ToBase(value), WrittenForIs = basis };

    public static Formula Sound(this FormulaDraft draft)
    {
        var log = new FaultLog();
        var formula = Formula.Create(draft, log.Root);
        Assert.True(log.IsClean, string.Join("; ", log.Faults.Select(f => $"{f.Pointer} {f.Code}")));
        Assert.NotNull(formula);
        return formula;
    }

    public static FormulaRatios Ratios(this FormulaDraft draft, FindingLog? findings = null) =>
        FormulaRatios.Of(draft.Sound(), Seed.Catalogue, findings ?? new FindingLog(Seed.Catalogue), "/formula");

    public static Treatment On(this FormulaRatios ratios, params int[] lines) => new() { Ratios = ratios, OnLines = lines };

    public static PileLine Pieces(string cut, params double[] grams) => new()
    {
        Id = cut,
        Cut = Cut(cut),
        WeightIs = WeightBasis.Green,
        WeighedGrams = grams,
    };

    public static Pile Pile(params PileLine[] lines) => new(lines);

    public static BatchSheet Sheet(Pile pile, WeighingStep step, double overagePercent, params Treatment[] treatments) =>
        Sheet(pile, ScaleSet.Of(step), overagePercent, treatments);

    public static BatchSheet Sheet(Pile pile, ScaleSet scales, double overagePercent, params Treatment[] treatments) =>
        BatchSheet.Compute(new SheetRequest { Pile = pile, Treatments = treatments, Scales = scales, OveragePercent = overagePercent });

    public static WeighingStep Step(double value, string unit) => new(value, UnitTable.Get(unit));

    /// <summary>An ingredient with one form of a density, and salt and sodium of its own.</summary>
    public static Ingredient MadeUp(string id, Band? gramsPerMillilitre, Band saltGramsPer100Grams, double sodiumMilligramsPer100Grams, string group = "spice") => new()
    {
        Id = id,
        Name = id,
        Group = group,
        SodiumMilligramsPer100Grams = sodiumMilligramsPer100Grams,
        SaltGramsPer100Grams = saltGramsPer100Grams,
        SaltMethod = "made-up",
        WaterGramsPer100Grams = null,
        SugarsGramsPer100Grams = null,
        Allergens = [],
        IsGenericCompound = false,
        Citation = NoSource,
        Forms = [Form("one", gramsPerMillilitre, isDefault: true)],
        Measures = [],
        PieceMeasures = [],
    };

    public static IngredientForm Form(string id, Band? gramsPerMillilitre, bool isDefault, Confidence confidence = Confidence.High) => new(
        id, id, isDefault,
        gramsPerMillilitre is { } band ? new BulkDensity(band, NoSource with { Confidence = confidence }, "filling") : null,
        null, null);
}
