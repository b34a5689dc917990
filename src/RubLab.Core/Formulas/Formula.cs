using RubLab.Core.Faults;
using RubLab.Core.Quantities;

namespace RubLab.Core.Formulas;

/// <summary>A named mix with a kind and lines, each line a ratio to the base. Always sound: made by <see cref="Create"/>.</summary>
public sealed record Formula
{
    public const int MostLines = 100;

    // In base units; below this the quotients of shares and doses underflow.
    private const double LeastAmount = 1e-300;

    private Formula()
    {
    }

    public required string Name { get; init; }

    public required FormulaKind Kind { get; init; }

    public required RatioBase Base { get; init; }

    public required AuthoringMode Mode { get; init; }

    /// <summary>Grams of finished formula per kilogram of the base; for an area base, per 100 cm2. None: the lines' own sum.</summary>
    public required double? Dose { get; init; }

    /// <summary>The weight of meat an old card's amounts were written for.</summary>
    public required double? WrittenForGrams { get; init; }

    public required WeightBasis WrittenForIs { get; init; }

    /// <summary>Weight left when it is boiled down, percent of what goes into the pot; 100 where nothing is boiled off.</summary>
    public required double PercentLeft { get; init; }

    public required IReadOnlyList<FormulaLine> Lines { get; init; }

    /// <summary>Checks the rules between the members and notes every one broken.</summary>
    /// <returns>The formula, or null when it is not sound or parts of it could not be read.</returns>
    public static Formula? Create(FormulaDraft draft, Place at)
    {
        var before = at.Log.Count;
        var mode = ModeOf(draft, at);
        CheckBase(draft, at);
        CheckDose(draft, mode, at);
        RestLine.Check(draft, mode, at);
        CheckLines(draft, mode, at);
        if (draft is { PercentLeft: not null, Kind: not (null or FormulaKind.Sauce or FormulaKind.Mop) })
        {
            at.At("reducedTo").Fault("reduction-not-allowed", "Only a sauce or a mop is boiled down.");
        }

        var complete = draft is { Name: not null, Kind: not null } && draft.Lines.Count > 0
            && draft.Lines.All(l => l is { Ingredient: not null, Amount: not null, Unit: not null } or { Ingredient: not null, IsAmountLeftOut: true });
        if (mode is null || !complete || at.Log.Count > before)
        {
            return null;
        }

        var rest = RestLine.Percent(mode.Value, draft.Lines.Sum(l => l.Amount ?? 0));
        var restUnit = draft.Lines.FirstOrDefault(l => l.Unit is not null)?.Unit;
        return new Formula
        {
            Name = draft.Name!,
            Kind = draft.Kind!.Value,
            Base = draft.Base,
            Mode = mode.Value,
            Dose = draft.Dose is { } dose ? draft.DoseUnit!.ToBase(dose) : null,
            WrittenForGrams = draft.WrittenForGrams,
            WrittenForIs = draft.WrittenForIs,
            PercentLeft = draft.PercentLeft ?? 100,
            Lines = draft.Lines.Select(l => new FormulaLine(
                l.Ingredient!, l.NamedForm, l.Amount ?? rest, l.Unit ?? restUnit!, l.NitriteFraction, l.NitrateFraction, l.IsAmountLeftOut)
            {
                DeclaredSaltPercent = l.DeclaredSaltPercent,
            }).ToList(),
        };
    }

    private static AuthoringMode? ModeOf(FormulaDraft draft, Place at)
    {
        AuthoringMode? mode = null;
        var isDry = draft.Kind is FormulaKind.DryBrine or FormulaKind.Rub;
        for (var i = 0; i < draft.Lines.Count; i++)
        {
            if (draft.Lines[i].Unit is not { } unit)
            {
                continue;
            }

            AuthoringMode? own = unit.Dimension switch
            {
                Dimension.Mass or Dimension.Volume => AuthoringMode.Amounts,
                Dimension.Ratio => AuthoringMode.Ratios,
                Dimension.PartsByMass => AuthoringMode.PartsByMass,
                Dimension.PartsByVolume => AuthoringMode.PartsByVolume,
                Dimension.ShareOfLiquid when !isDry => AuthoringMode.PercentOfLiquid,
                Dimension.ShareOfWater when !isDry => AuthoringMode.PercentOfWater,
                _ => null,
            };
            if (own is null)
            {
                at.At("lines").At(i).At("amount").At("unit").Fault(
                    "unit-not-allowed", $"A line of this formula cannot be given in {unit.Symbol}.", ("unit", unit.Symbol));
            }
            else if (mode is not null && own != mode)
            {
                at.At("lines").At(i).At("amount").At("unit").Fault(
                    "mixed-authoring",
                    $"This line is written in {unit.Symbol} and an earlier one in another manner: amounts, ratios, parts by mass, parts by volume, percent of the liquid and percent of the water do not mix in one formula.",
                    ("unit", unit.Symbol));
            }

            mode ??= own;
        }

        return mode;
    }

    private static void CheckBase(FormulaDraft draft, Place at)
    {
        if (draft is { Kind: FormulaKind.Injection or FormulaKind.Soak, Base: not RatioBase.Green })
        {
            at.At("base").Fault("base-not-allowed", "What is put into meat, and what meat lies in, stands on the green weight.");
        }
    }

    private static void CheckDose(FormulaDraft draft, AuthoringMode? mode, Place at)
    {
        if (draft.DoseUnit is { } unit)
        {
            var wanted = draft.Base == RatioBase.Area ? Dimension.Coverage : Dimension.Ratio;
            if (unit.Dimension != wanted)
            {
                at.At("dose").At("unit").Fault(
                    "unit-not-allowed",
                    $"The dose of a formula on this base is given in {string.Join(", ", UnitTable.SymbolsOf(wanted))}, not {unit.Symbol}.",
                    ("unit", unit.Symbol), ("allowed", UnitTable.SymbolsOf(wanted).ToArray()));
            }
        }

        if (draft.Dose is not null || draft.DoseUnit is not null || draft.IsDoseUnreadable)
        {
            return;
        }

        if (mode is AuthoringMode.PartsByMass or AuthoringMode.PartsByVolume)
        {
            at.At("dose").Fault("dose-required", "Parts say what the mix is, not how much of it: give the dose.");
        }
        else if (RestLine.Has(mode))
        {
            at.At("dose").Fault("dose-required", "Percent of a liquid say what the liquid is, not how much of it: give the dose, liquid per meat.");
        }
        else if (mode is AuthoringMode.Amounts && draft.WrittenForGrams is null && !draft.IsWrittenForUnreadable)
        {
            at.At("writtenFor").Fault(
                "written-for-required", "Amounts need the weight of meat they were written for, or a dose.");
        }
        else if (mode is AuthoringMode.Amounts && draft is { WrittenForIs: WeightBasis.Purchase, Base: not RatioBase.Green })
        {
            at.At("writtenForIs").Fault(
                "base-unknown", "A card written for meat as bought stands on the raw meat: it cannot have a base of cooked weight, portions or area.");
        }
        else if (draft.Base == RatioBase.Area)
        {
            at.At("dose").Fault("dose-required", "A formula by area needs its dose in g/100cm2.");
        }
    }

    private static bool IsNothing(FormulaLineDraft line) =>
        line.Amount is { } amount && (line.Unit?.ToBase(amount) ?? amount) < LeastAmount;

    private static void CheckLines(FormulaDraft draft, AuthoringMode? mode, Place at)
    {
        if (draft.Lines.Count > 0 && draft.Lines.All(IsNothing))
        {
            at.At("lines").Fault("all-zero", "Every line is zero: there is nothing to weigh.");
        }

        for (var i = 0; i < draft.Lines.Count; i++)
        {
            var line = draft.Lines[i];
            CheckCure(line, at.At("lines").At(i));
            if (line is { Ingredient: { } ingredient, Unit: { } unit }
                && (unit.Dimension == Dimension.Volume || mode == AuthoringMode.PartsByVolume)
                && (line.NamedForm ?? ingredient.DefaultForm) is { Density: null } form)
            {
                at.At("lines").At(i).At("amount").Fault(
                    "no-density",
                    $"{ingredient.Name}, {form.Name}: no density is known for this form, so it cannot be given by volume. Give a mass.",
                    ("ingredient", ingredient.Id), ("form", form.Id));
            }
        }
    }

    // A content is never assumed, and what is salt or spice is never a cure as well.
    private static void CheckCure(FormulaLineDraft line, Place at)
    {
        if (line.Ingredient is not { } ingredient)
        {
            return;
        }

        var isDeclared = line.NitriteFraction is not null || line.NitrateFraction is not null;
        if (isDeclared && !ingredient.IsOfCures)
        {
            at.At(line.NitriteFraction is not null ? "nitriteFraction" : "nitrateFraction").Fault(
                "not-a-cure", $"{ingredient.Name} is no cure. Give the cure a line of its own: salt and cure are never one line.", ("ingredient", ingredient.Id));
        }

        if (line.NitriteFraction + line.NitrateFraction > 1)
        {
            at.At("nitrateFraction").Fault("cure-over-whole", "Nitrite and nitrate together are more than the whole of it.");
        }

        if (ingredient.NeedsDeclaredContent && !line.IsCureUnreadable && !isDeclared)
        {
            at.At("nitriteFraction").Fault(
                "cure-content-unknown", $"{ingredient.Name}: give the part of it that is nitrite, from its pack. Without one it is not weighed.", ("ingredient", ingredient.Id));
        }
    }
}
