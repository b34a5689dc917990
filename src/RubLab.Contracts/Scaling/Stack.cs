using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Remarks;
using RubLab.Core.Scaling;

namespace RubLab.Contracts.Scaling;

/// <summary>A pile and the treatments on it, read together: what batch sheets and salt checks share.</summary>
internal sealed class Stack
{
    private Stack(Pile pile, List<Treatment> treatments)
    {
        Pile = pile;
        Treatments = treatments;
    }

    public Pile Pile { get; }

    public List<Treatment> Treatments { get; }

    /// <summary>Reads both; null when either has a fault.</summary>
    public static Stack? Read(
        IReadOnlyList<PileLine?> lines, IReadOnlyList<TreatmentRequest?>? treatments,
        Catalogue catalogue, FormulaLookup formulas, FindingLog findings, Place at)
    {
        var before = at.Log.Count;
        var read = new TreatmentReader(catalogue, formulas, findings, lines).Read(treatments, at.At("treatments"));
        if (at.Log.Count > before || lines.Contains(null) || lines.Count == 0)
        {
            return null;
        }

        return new Stack(new Pile(lines.Select(l => l!).ToList()), read);
    }

    /// <summary>Notes what had to be assumed about the pile.</summary>
    public void NoticeAssumptions(FindingLog findings)
    {
        for (var i = 0; i < Pile.Lines.Count; i++)
        {
            var line = Pile.Lines[i];
            var pointer = $"/pile/{i}";
            if (line is { IsPlanned: true, Cut.TrimLossPercent: { } trim } && line.WeighedGrams.Count > 0)
            {
                findings.Add(
                    "trim-assumed", pointer, trim.Citation.SourceId,
                    ("line", line.Id), ("low", trim.Band.Low), ("typical", trim.Band.Typical), ("high", trim.Band.High));
            }

            NoticeCooking(line, pointer, findings);
            var isSalty = Treatments.Exists(t => t.OnLines.Contains(i) && t.Ratios.SaltSharePercent.Typical > 0);
            if (line.AddedSolutionPercent > 0 && isSalty)
            {
                findings.Add("already-salted", pointer, null, ("line", line.Id));
            }

            if (line.Cut.SaltProducts.Count == 0)
            {
                findings.Add("no-salt-range", pointer, null, ("line", line.Id));
            }
        }
    }

    /// <summary>The cautions that go with this meat and these treatments.</summary>
    public IEnumerable<Caution> CautionsOf(Catalogue catalogue)
    {
        var kinds = Treatments.Select(t => t.Ratios.Formula.Kind).ToHashSet();
        var isLiquid = kinds.Overlaps([FormulaKind.Mop, FormulaKind.Sauce, FormulaKind.Injection, FormulaKind.Soak]);
        var lines = Treatments.SelectMany(t => t.Ratios.Formula.Lines).ToList();
        return catalogue.Cautions.Where(caution => caution.AppliesTo switch
        {
            "any" => true,
            "liquid" => isLiquid,
            "label" => lines.Exists(l => l.Ingredient.IsGenericCompound || l.Ingredient.Allergens.Count > 0),
            "cure" => lines.Exists(l => l.NitriteFraction > 0 || l.NitrateFraction > 0),
            var kind => Pile.Lines.Any(l => l.Cut.Class == kind),
        });
    }

    private static void NoticeCooking(PileLine line, string pointer, FindingLog findings)
    {
        if (line is { CookYieldPercent: null, Cut.CookYields: [var yield, ..] })
        {
            findings.Add(
                "yield-assumed", pointer, yield.Citation.SourceId,
                ("line", line.Id), ("low", yield.Percent.Low), ("high", yield.Percent.High));
        }

        if (line is { KeptInCookingPercent: null, JuicesReturned: false, Cut.KeptInCookingPercent: { } kept })
        {
            findings.Add(
                "kept-assumed", pointer, kept.Citation.SourceId,
                ("line", line.Id), ("low", kept.Band.Low), ("high", kept.Band.High));
        }
    }
}
