using RubLab.Contracts.Curing;
using RubLab.Contracts.Reading;
using RubLab.Contracts.Remarks;
using RubLab.Core.Catalogues;
using RubLab.Core.Curing;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
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

        var pile = new Pile(lines.Select(l => l!).ToList());
        WeighBack(pile, read, at.At("pile"));
        for (var i = 0; i < read.Count; i++)
        {
            if (read[i].Soak is not null)
            {
                read[i] = SoakUptake.Of(read[i], pile, catalogue, findings, at.At("treatments").At(i));
            }
        }

        var stack = new Stack(pile, read);
        for (var i = 0; i < read.Count; i++)
        {
            stack.CheckBase(read[i], findings, at.At("treatments").At(i).At(treatments![i]!.Formula is null ? "formulaId" : "formula"));
        }

        return at.Log.Count == before ? stack : null;
    }

    /// <summary>Notes what had to be assumed about the pile.</summary>
    public void NoticeAssumptions(Catalogue catalogue, FindingLog findings)
    {
        for (var i = 0; i < Pile.Lines.Count; i++)
        {
            var line = Pile.Lines[i];
            var pointer = $"/pile/{i}";
            if (line is { IsPlanned: true, Cut.TrimLossPercent: { } trim } && line.WeighedGrams.Count > 0)
            {
                findings.Add(
                    "trim-assumed", pointer, trim.Citation.SourceId,
                    ("line", Said.Line(line.Id, line.Cut)), ("low", trim.Band.Low), ("typical", trim.Band.Typical), ("high", trim.Band.High));
            }

            NoticeCooking(line, pointer, findings);
            if (line is { BonePercent: null, Cut.BonePercent: { } bone })
            {
                findings.Add(
                    "bone-assumed", pointer, bone.Citation.SourceId,
                    ("line", Said.Line(line.Id, line.Cut)), ("low", bone.Band.Low), ("typical", bone.Band.Typical), ("high", bone.Band.High));
            }

            if (line.AddedSolutionPercent > 0)
            {
                NoticeSolution(i, pointer, findings);
            }

            if (!catalogue.SaltRanges.Any(range => line.SaltProducts.Contains(range.AppliesTo)))
            {
                findings.Add("no-salt-range", pointer, null, ("line", Said.Line(line.Id, line.Cut)));
            }
        }
    }

    /// <summary>The cautions that go with this meat and these treatments.</summary>
    public IReadOnlyList<CautionResponse> CautionsOf(Catalogue catalogue) => new CautionSubject(
        [.. Treatments.Select(t => t.Ratios.Formula.Kind)],
        [.. Treatments.SelectMany(t => t.Ratios.Formula.Lines).Select(l => l.Ingredient)],
        [.. Pile.Lines.Select((line, i) => (GroundProducts.ClassOf(line.Cut, line.Product), IsPierced(i)))],
        Pile.Lines.Any(line => line.AddedSolutionPercent > 0)).Cautions(catalogue);

    /// <summary>The limited additives of one line against every level that goes with them.</summary>
    /// <param name="line">Index of the line.</param>
    /// <param name="isWeighed">The mixes are weighed out; false for a card that is measured as written.</param>
    /// <param name="catalogue">The reference data.</param>
    /// <param name="sheet">What is weighed of them, in whole steps; none where nothing is weighed yet.</param>
    public IReadOnlyList<LimitCheck> LimitsOf(int line, bool isWeighed, Catalogue catalogue, BatchSheet? sheet = null) => LimitChecks.Of(
        AdditiveLoads.Of(Pile, line, Treatments, isWeighed), Pile.Lines[line], catalogue,
        sheet is null ? null : AdditiveLoads.Of(Pile, line, Treatments, isWeighed, (t, i) => WeighedParts.OnPieces(sheet.Treatments[t], Pile, line, i)));

    /// <summary>Refuses a stack that is above a level, at every treatment that brings some of it.</summary>
    /// <param name="limits">The checks of each line.</param>
    /// <param name="placeOf">Where a treatment's formula stands in the request.</param>
    public void RefuseExceeded(IReadOnlyList<IReadOnlyList<LimitCheck>> limits, Func<int, Place> placeOf)
    {
        for (var line = 0; line < limits.Count; line++)
        {
            foreach (var check in limits[line].Where(c => c.IsExceeded))
            {
                var most = check.MeasuredPartsPerMillion!.Value.High;
                var bringers = check.Load.Shares.GroupBy(share => share.Treatment).ToList();
                foreach (var shares in bringers)
                {
                    var part = bringers.Count == 1 ? ", all of it" : $" in all, {Figures.Read(shares.Sum(share => check.Limit.Counted(share).High))} ppm of it";
                    LimitFaults.Note(
                        placeOf(shares.Key), check, shares.First(), Pile.GreenGramsIn(line),
                        $"line '{Pile.Lines[line].Id}' would get {Figures.Read(most, check.Limit.HighPartsPerMillion!.Value)} ppm{part} by '{Treatments[shares.Key].Ratios.Formula.Name}'",
                        Pile.Lines[line].Id);
                }
            }
        }
    }

    // Weights after injection replace the estimate of the one injection they can be of.
    private static void WeighBack(Pile pile, List<Treatment> treatments, Place at)
    {
        for (var line = 0; line < pile.Lines.Count; line++)
        {
            if (pile.Lines[line].WeighedBackGrams is null)
            {
                continue;
            }

            var injections = treatments.FindAll(t => t.Ratios.Formula.Kind == FormulaKind.Injection && t.OnLines.Contains(line));
            if (injections.Count != 1)
            {
                at.At(line).At("weighedBackIs").Fault(
                    "weighed-back-not-injected", "Pieces are weighed back after one injection: on this line there is none, or more than one.",
                    ("count", (double)injections.Count));
            }
            else if (WeighedBack.RetainedPercent(injections[0], pile, line) is { } retained)
            {
                var byLine = new Dictionary<int, Band>(injections[0].RetainedPercentByLine ?? new Dictionary<int, Band>()) { [line] = retained };
                treatments[treatments.IndexOf(injections[0])] = injections[0] with { RetainedPercentByLine = byLine };
            }
        }
    }

    // Injected in the kitchen or by the packer, or run through blades: no longer whole inside.
    private bool IsPierced(int line) => Pile.Lines[line] is { IsBladeTenderised: true } or { AddedSolutionPercent: > 0 }
        || Treatments.Exists(t => t.Ratios.Formula.Kind == FormulaKind.Injection && t.OnLines.Contains(line));

    private void NoticeSolution(int index, string pointer, FindingLog findings)
    {
        var line = Pile.Lines[index];
        if (line.PackSodiumMilligramsPer100Grams is null)
        {
            if (line.Cut.WithAddedSolution is { } similar)
            {
                findings.Add(
                    "solution-sodium-unknown", pointer, similar.Citation.SourceId,
                    ("line", Said.Line(line.Id, line.Cut)), ("sodium", similar.SodiumMilligramsPer100Grams));
            }
            else
            {
                findings.Add("already-salted", pointer, null, ("line", Said.Line(line.Id, line.Cut)));
            }
        }

        foreach (var treatment in Treatments)
        {
            if (treatment.OnLines.Contains(index) && treatment.Ratios.SaltSharePercent.Typical > 0)
            {
                var salt = treatment.DoseCounted * treatment.Ratios.SaltSharePercent.Typical / 100 * treatment.Applications;
                findings.Add(
                    "salted-twice", pointer, null, ("line", Said.Line(line.Id, line.Cut)), ("treatment", treatment.Ratios.Formula.Name),
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
                    ("formula", formula.Name), ("line", Said.Line(line.Id, line.Cut)), ("trim", trim));
            }
            else if (formula.Base is RatioBase.Cooked or RatioBase.Portion && line.YieldCountedPercent is { } yield)
            {
                findings.Add(
                    "cooked-base-assumed", formulaAt.Pointer, line.Cut.CookYields is [var first, ..] ? first.Citation.SourceId : null,
                    ("treatment", formula.Name), ("line", Said.Line(line.Id, line.Cut)), ("low", Math.Round(yield.Low, 1)), ("high", Math.Round(yield.High, 1)));
            }
        }
    }

    private static void NoticeCooking(PileLine line, string pointer, FindingLog findings)
    {
        if (line is { CookYieldPercent: null, Cut.CookYields: [var yield, ..], YieldCountedPercent: { } counted })
        {
            findings.Add(
                "yield-assumed", pointer, yield.Citation.SourceId,
                ("line", Said.Line(line.Id, line.Cut)), ("low", Math.Round(counted.Low, 1)), ("high", Math.Round(counted.High, 1)));
            if (yield.WidthCitation is { } width)
            {
                findings.Add(
                    "yield-width-estimated", pointer, width.SourceId, ("line", Said.Line(line.Id, line.Cut)), ("typical", Math.Round(counted.Typical, 1)));
            }
        }

        if (line is { KeptInCookingPercent: null, JuicesReturned: false, Cut.KeptInCookingPercent: { } kept })
        {
            findings.Add(
                "kept-assumed", pointer, kept.Citation.SourceId,
                ("line", Said.Line(line.Id, line.Cut)), ("low", kept.Band.Low), ("high", kept.Band.High));
        }
    }
}
