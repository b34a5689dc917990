using RubLab.Contracts.Reading;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;

namespace RubLab.Contracts.Curing;

/// <summary>Finds the line that is free for each target, and solves them in the order in which they hang on one another.</summary>
internal static class CureGoals
{
    private static readonly Bounds Level = new(1e-6, 1000, true, "g/kg");

    /// <summary>The goals, and a fault for each line that leaves its amount out with no target for it.</summary>
    public static List<CureGoal> Read(IReadOnlyList<CureTargetRequest?>? targets, List<FormulaLineDraft> drafts, Catalogue catalogue, Place at)
    {
        var goals = new List<CureGoal>();
        if (targets is not null && !Listed.Holds(targets, CureRequest.MostTargets, "target", "targets", at.At("targets")))
        {
            return goals;
        }

        for (var k = 0; k < (targets?.Count ?? 0); k++)
        {
            var place = at.At("targets").At(k);
            if (targets![k] is not { } target)
            {
                Reader.Missing(place);
                continue;
            }

            var ingredient = Lookup.Ingredient(target.Ingredient, catalogue, place.At("ingredient"));
            var isKnown = target.Additive is null || CureGoal.Additives.Contains(target.Additive);
            if (!isKnown)
            {
                place.At("additive").Fault(
                    "unknown-word", $"'{Shown.Text(target.Additive!)}' is not one of {string.Join(", ", CureGoal.Additives)}.",
                    ("value", Shown.Text(target.Additive!)), ("allowed", CureGoal.Additives.ToArray()));
            }

            var level = Reader.Amount(target.Reached, place.At("reached"), Level, isRequired: true, Dimension.Ratio);
            if (ingredient is null)
            {
                continue;
            }

            var line = drafts.FindIndex(d => d.IsAmountLeftOut && d.Ingredient?.Id == ingredient.Id && !goals.Exists(g => ReferenceEquals(drafts[g.Line], d)));
            if (line < 0)
            {
                place.At("ingredient").Fault(
                    "target-not-free", $"No line of {ingredient.Name} leaves its amount out for this target.", ("ingredient", ingredient.Id));
                continue;
            }

            var goal = new CureGoal(k, line, ingredient, isKnown ? target.Additive : null, level ?? 0);
            goals.Add(goal);
            if (goal.PerGram(drafts[line]) <= 0 && !drafts[line].IsCureUnreadable && !drafts[line].Ingredient!.NeedsDeclaredContent)
            {
                place.At("additive").Fault(
                    "additive-not-carried", $"{ingredient.Name} brings no {goal.Additive}.", ("ingredient", ingredient.Id), ("additive", goal.Additive!));
            }
        }

        for (var i = 0; i < drafts.Count; i++)
        {
            if (drafts[i].IsAmountLeftOut && !goals.Exists(g => g.Line == i))
            {
                at.At("lines").At(i).At("amount").Fault("required", "Give the amount, or a target for this line.");
            }
        }

        return goals;
    }

    /// <summary>The lines with every free amount solved, in g/kg; null when a target cannot be met.</summary>
    /// <param name="goals">The goals.</param>
    /// <param name="drafts">The lines, those with an amount in g/kg.</param>
    /// <param name="at">Where the targets stand.</param>
    public static List<FormulaLineDraft>? Solve(List<CureGoal> goals, List<FormulaLineDraft> drafts, Place at)
    {
        var before = at.Log.Count;
        var solved = drafts.ToList();
        var open = goals.ToList();
        while (open.Count > 0)
        {
            var next = open.FindIndex(g => open.TrueForAll(other => other.Line == g.Line || g.PerGram(drafts[other.Line]) <= 0));
            if (next < 0)
            {
                foreach (var goal in open)
                {
                    at.At(goal.Target).Fault("targets-undetermined", "These targets hang on one another: give the amount of one of their lines.");
                }

                return null;
            }

            Meet(open[next], solved, at.At(open[next].Target).At("reached"));
            open.RemoveAt(next);
        }

        return at.Log.Count == before ? solved : null;
    }

    private static void Meet(CureGoal goal, List<FormulaLineDraft> lines, Place at)
    {
        var present = lines.Where((_, i) => i != goal.Line).Sum(l => goal.PerGram(l) * (l.Amount ?? 0));
        var missing = goal.GramsPerKilogram - present;
        if (missing < -goal.GramsPerKilogram * Whole.LastBits)
        {
            at.Fault(
                "target-below-present", $"The other lines bring more of it already: {Figures.Read(present, goal.GramsPerKilogram)} g/kg.",
                ("present", present), ("target", goal.GramsPerKilogram), ("unit", "g/kg"));
        }

        var amount = Math.Max(0, missing) / goal.PerGram(lines[goal.Line]);
        if (amount > Level.Highest)
        {
            at.At("value").Fault(
                "out-of-range", "This would take more of the line than there is meat.", ("value", amount), ("highest", Level.Highest), ("unit", Level.Unit));
        }

        lines[goal.Line] = lines[goal.Line] with { Amount = amount };
    }
}
