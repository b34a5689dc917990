using RubLab.Contracts.Reading;
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
        double? cookerCelsius, Catalogue catalogue, FormulaLookup formulas, FindingLog findings, Place at)
    {
        var before = at.Log.Count;
        var read = new TreatmentReader(catalogue, formulas, findings, lines, cookerCelsius).Read(treatments, at.At("treatments"));
        if (at.Log.Count > before || lines.Contains(null) || lines.Count == 0)
        {
            return null;
        }

        var stack = new Stack(new Pile(lines.Select(l => l!).ToList()), read);
        for (var i = 0; i < read.Count; i++)
        {
            stack.CheckBase(read[i], findings, at.At("treatments").At(i).At(treatments![i]!.Formula is null ? "formulaId" : "formula"));
        }

        return at.Log.Count == before ? stack : null;
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
            if (line is { BonePercent: null, Cut.BonePercent: { } bone })
            {
                findings.Add(
                    "bone-assumed", pointer, bone.Citation.SourceId,
                    ("line", line.Id), ("low", bone.Band.Low), ("typical", bone.Band.Typical), ("high", bone.Band.High));
            }

            if (line.AddedSolutionPercent > 0)
            {
                NoticeSolution(i, pointer, findings);
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

    private void NoticeSolution(int index, string pointer, FindingLog findings)
    {
        var line = Pile.Lines[index];
        if (line.PackSodiumMilligramsPer100Grams is null)
        {
            if (line.Cut.WithAddedSolution is { } similar)
            {
                findings.Add(
                    "solution-sodium-unknown", pointer, similar.Citation.SourceId,
                    ("line", line.Id), ("sodium", similar.SodiumMilligramsPer100Grams));
            }
            else
            {
                findings.Add("already-salted", pointer, null, ("line", line.Id));
            }
        }

        foreach (var treatment in Treatments)
        {
            if (treatment.OnLines.Contains(index) && treatment.Ratios.SaltSharePercent.Typical > 0)
            {
                var salt = treatment.DoseCounted * treatment.Ratios.SaltSharePercent.Typical / 100 * treatment.Applications;
                findings.Add(
                    "salted-twice", pointer, null, ("line", line.Id), ("treatment", treatment.Ratios.Formula.Name),
                    ("salt", Math.Round(salt, 1)));
            }
        }
    }

    private void CheckBase(Treatment treatment, FindingLog findings, Place formulaAt)
    {
        var formula = treatment.Ratios.Formula;
        foreach (var index in treatment.OnLines)
        {
            var line = Pile.Lines[index];
            if (BaseWeight.PerKilogramGreen(treatment.Ratios, Pile, index) is null)
            {
                var needs = formula.Base switch
                {
                    RatioBase.Cooked => "a cookYield",
                    RatioBase.Portion => "a portion and a cookYield",
                    _ => line.Cut.Shape is null ? "a shape, which this cut has not" : "the weights of the pieces",
                };
                formulaAt.Fault(
                    "base-unknown",
                    $"'{formula.Name}' stands on base {Vocabulary.Bases[formula.Base]}; for line '{line.Id}' that needs {needs}.",
                    ("base", Vocabulary.Bases[formula.Base]), ("line", line.Id));
            }
            else if (treatment.Ratios.RatiosAreOf == WeightBasis.Purchase)
            {
                var trim = line.WeightIs == WeightBasis.Purchase ? line.TrimCountedPercent : line.Cut.TrimLossPercent?.Band.Typical ?? 0;
                findings.Add(
                    "written-for-purchase", formulaAt.Pointer, line.Cut.TrimLossPercent?.Citation.SourceId,
                    ("formula", formula.Name), ("line", line.Id), ("trim", trim));
            }
            else if (formula.Base is RatioBase.Cooked or RatioBase.Portion && line.YieldCountedPercent is { } yield)
            {
                findings.Add(
                    "cooked-base-assumed", formulaAt.Pointer, line.Cut.CookYields is [var first, ..] ? first.Citation.SourceId : null,
                    ("treatment", formula.Name), ("line", line.Id), ("low", yield.Low), ("high", yield.High));
            }
        }
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
