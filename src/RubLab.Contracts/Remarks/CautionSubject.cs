using RubLab.Core.Catalogues;
using RubLab.Core.Formulas;
using RubLab.Core.Ingredients;
using RubLab.Core.Remarks;

namespace RubLab.Contracts.Remarks;

/// <summary>What the cautions of an answer are chosen by: what is put on, what is in it, and on what meat.</summary>
/// <param name="Kinds">The kinds of what is put on.</param>
/// <param name="Ingredients">All that is in it.</param>
/// <param name="Meats">The classes of the cuts, and whether the inside of the meat was opened; none where no meat is asked about.</param>
/// <param name="HasSolution">Whether the packer of some of the meat added a solution.</param>
public sealed record CautionSubject(
    IReadOnlyCollection<FormulaKind> Kinds, IReadOnlyCollection<Ingredient> Ingredients, IReadOnlyCollection<(string Class, bool IsPierced)> Meats,
    bool HasSolution = false)
{
    /// <summary>The cautions that go with it, in the order of the reference data.</summary>
    public IReadOnlyList<CautionResponse> Cautions(Catalogue catalogue) => CautionResponse.From(catalogue.Cautions.Where(GoesWith));

    private bool GoesWith(Caution caution) => caution.AppliesTo switch
    {
        "any" => true,
        "liquid" => Holds(FormulaKind.Mop) || Holds(FormulaKind.Sauce) || Holds(FormulaKind.Injection) || Holds(FormulaKind.Soak),
        "sauce" => Holds(FormulaKind.Mop) || Holds(FormulaKind.Sauce),
        // Meat that nobody named may be a bird.
        "poultry-soak" => Holds(FormulaKind.Soak) && !IsCured && (Meats.Count == 0 || Meats.Any(meat => meat.Class == "poultry")),
        "cured-soak" => Holds(FormulaKind.Soak) && IsCured,
        "injected" => Holds(FormulaKind.Injection),
        "not-intact" => Meats.Any(meat => meat.IsPierced),
        // The figure for whole roasts and steaks is not shown as enough for meat whose inside was opened.
        "red-meat-not-intact" => Meats.Any(meat => meat is { Class: "red-meat", IsPierced: true }),
        "red-meat" => Meats.Any(meat => meat is { Class: "red-meat", IsPierced: false }),
        // Meat injected here has a caution of its own that says it.
        "added-solution" => HasSolution || (Holds(FormulaKind.Soak) && Meats.Count > 0),
        "label" => Ingredients.Any(i => i.IsGenericCompound || i.Allergens.Count > 0),
        "cure" => IsCured,
        var other => Meats.Any(meat => meat.Class == other) || Ingredients.Any(i => i.Id == other),
    };

    private bool IsCured => Ingredients.Any(i => i.IsCure);

    private bool Holds(FormulaKind kind) => Kinds.Contains(kind);
}
