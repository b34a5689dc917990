using RubLab.Contracts.Reading;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;

namespace RubLab.Contracts.Brining;

/// <summary>Finds the line that is free for each target: the one that leaves out its amount, or a new one at the end.</summary>
internal static class BrineGoals
{
    private static readonly Bounds Level = new(1e-6, 1000, true, "g/kg");

    /// <summary>The goals; lines that targets add are appended to the drafts.</summary>
    public static List<BrineGoal> Read(
        IReadOnlyList<BrineTargetRequest?>? targets, List<FormulaLineDraft> drafts, Catalogue catalogue, Place at)
    {
        var goals = new List<BrineGoal>();
        if (targets is null || !Listed.Holds(targets, BrineRequest.MostTargets, "target", "targets", at))
        {
            return goals;
        }

        var asked = new List<(int Index, Ingredient Ingredient, double? Level)>();
        for (var k = 0; k < targets.Count; k++)
        {
            if (targets[k] is not { } target)
            {
                Reader.Missing(at.At(k));
                continue;
            }

            var ingredient = Lookup.Ingredient(target.Ingredient, catalogue, at.At(k).At("ingredient"));
            var level = Reader.Amount(target.Reached, at.At(k).At("reached"), Level, isRequired: true, Dimension.Ratio);
            if (ingredient is { IsCure: true })
            {
                at.At(k).At("ingredient").Fault("cure-by-target", $"{ingredient.Name} carries nitrite or nitrate: give its amount, or solve a dry or ground cure at /v1/cures. What a target leaves in is not what the law counts.");
            }
            else if (ingredient is not null && asked.Exists(a => a.Ingredient.Id == ingredient.Id))
            {
                at.At(k).At("ingredient").Fault("duplicate-id", $"'{ingredient.Id}' has a target already.", ("value", ingredient.Id));
            }
            else if (ingredient is not null)
            {
                asked.Add((k, ingredient, level));
            }
        }

        // Lines of their own ingredient first, so that pure salt takes none that another target needs.
        foreach (var (index, ingredient, level) in asked.OrderBy(a => a.Ingredient.Id == "sodium-chloride" ? 1 : 0).ToList())
        {
            var line = FreeLine(ingredient, drafts, goals, at.At(index));
            if (line is { } free)
            {
                goals.Add(new BrineGoal(index, free, ingredient, level ?? 0));
            }
        }

        return goals.OrderBy(g => g.Target).ToList();
    }

    private static int? FreeLine(Ingredient ingredient, List<FormulaLineDraft> drafts, List<BrineGoal> goals, Place at)
    {
        var isSalt = ingredient.Id == "sodium-chloride";
        var own = drafts.FindIndex(d => d.IsAmountLeftOut && d.Ingredient?.Id == ingredient.Id);
        if (own < 0 && isSalt)
        {
            own = drafts.FindIndex(d => d is { IsAmountLeftOut: true, Ingredient.IsSalt: true } && !goals.Exists(g => ReferenceEquals(drafts[g.Line], d)));
        }

        if (own >= 0)
        {
            return own;
        }

        if (!isSalt && drafts.Exists(d => d.Ingredient?.Id == ingredient.Id))
        {
            at.At("ingredient").Fault(
                "target-not-free", $"The line of {ingredient.Name} has an amount of its own: leave that out, or the target.", ("ingredient", ingredient.Id));
            return null;
        }

        drafts.Add(new FormulaLineDraft(ingredient, null, null, null, null, null, IsAmountLeftOut: true));
        return drafts.Count - 1;
    }
}
