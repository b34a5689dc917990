using RubLab.Contracts.Reading;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Scaling;

namespace RubLab.Contracts.Scaling;

/// <summary>Reads the treatments of a stack, noting every fault.</summary>
internal sealed class TreatmentReader(
    Catalogue catalogue, FormulaLookup formulas, FindingLog findings, IReadOnlyList<PileLine?> pile, double? cookerCelsius)
{
    public List<Treatment> Read(IReadOnlyList<TreatmentRequest?>? treatments, Place at)
    {
        var read = new List<Treatment>();
        if (!Listed.Holds(treatments, SheetRequest.MostTreatments, "treatment", "treatments", at))
        {
            return read;
        }

        for (var i = 0; i < treatments.Count; i++)
        {
            if (treatments[i] is { } treatment)
            {
                if (ReadOne(treatment, at.At(i)) is { } sound)
                {
                    read.Add(sound);
                }
            }
            else
            {
                Reader.Missing(at.At(i));
            }
        }

        return read;
    }

    private Treatment? ReadOne(TreatmentRequest treatment, Place at)
    {
        var before = at.Log.Count;
        var formula = FormulaSource.Read(treatment, catalogue, formulas, at, out var formulaAt, out var isInline);
        var on = ReadOn(treatment.On, at.At("on"));
        var retained = RetainedReader.Read(treatment.Retained, at.At("retained"));
        var applications = treatment.Applications ?? 1;
        if (applications is < 1 or > TreatmentRequest.MostApplications)
        {
            at.At("applications").Fault(
                "out-of-range", $"{applications} is out of range: from 1 to {TreatmentRequest.MostApplications} times.",
                ("value", (double)applications), ("lowest", 1d), ("highest", (double)TreatmentRequest.MostApplications));
        }

        var stage = Vocabulary.Stages.Read(treatment.Stage, at.At("stage"));
        var isArea = formula?.Base == RatioBase.Area;
        var dose = Reader.Amount(
            treatment.Dose, at.At("dose"), isArea ? Bounds.CoverageGrams : Bounds.DoseOf(formula?.Kind),
            isRequired: false, isArea ? Dimension.Coverage : Dimension.Ratio);
        if (formula is null || at.Log.Count > before)
        {
            return null;
        }

        var ratios = FormulaRatios.Of(formula, catalogue, findings, formulaAt.Pointer, isInline);
        MixFindings.Notice(ratios, cookerCelsius, catalogue, findings, formulaAt.Pointer);
        if (retained is null && formula.Kind != FormulaKind.Soak)
        {
            findings.Add("retained-assumed", at.Pointer, null, ("treatment", formula.Name));
        }

        var read = LiquidReader.Read(
            new Treatment
            {
                Ratios = ratios,
                OnLines = on,
                DoseGramsPerKilogram = dose,
                RetainedPercent = retained,
                Applications = applications,
                Stage = stage,
            },
            treatment, catalogue, findings, at);
        return at.Log.Count > before ? null : read;
    }

    private List<int> ReadOn(IReadOnlyList<string?>? on, Place at)
    {
        if (on is null)
        {
            return Enumerable.Range(0, pile.Count).ToList();
        }

        var lines = new List<int>();
        if (on.Count == 0)
        {
            at.Fault("required", "Name at least one pile line, or leave this out for all of them.");
        }

        for (var i = 0; i < on.Count; i++)
        {
            if (on[i] is not { } id)
            {
                Reader.Missing(at.At(i));
                continue;
            }

            var line = IndexOf(id);
            if (line < 0 && pile.Contains(null))
            {
                // It may name the line that could not be read; that line has its fault already.
                continue;
            }

            if (line < 0)
            {
                at.At(i).Fault("unknown-line", $"The pile has no line '{Shown.Text(id)}'.", ("value", Shown.Text(id)));
            }
            else if (lines.Contains(line))
            {
                at.At(i).Fault("duplicate-id", $"'{id}' is named twice.", ("value", id));
            }
            else
            {
                lines.Add(line);
            }
        }

        lines.Sort();
        return lines;
    }

    private int IndexOf(string id)
    {
        for (var i = 0; i < pile.Count; i++)
        {
            if (pile[i] is { } line && line.Id == id)
            {
                return i;
            }
        }

        return -1;
    }
}
