using RubLab.Contracts.Formulas;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Contracts.Scaling;
using RubLab.Core.Catalogues;
using RubLab.Core.Curing;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Scaling;

namespace RubLab.Contracts.Curing;

/// <summary>A cure as read: its lines solved as one formula, on one piece that stands for all the meat.</summary>
internal sealed record CureReader(CuringMethod Method, SheetPurpose Purpose, PileLine Meat, Formula Formula, IReadOnlyList<CureGoal> Goals, ScaleSet Scales)
{
    private const double KilogramGrams = 1000;
    private const double MostSteps = 1e9;

    private static readonly QuantityRequest UsualStep = QuantityRequest.Of(0.1, "g");

    /// <summary>Reads the request; null where anything is at fault.</summary>
    public static CureReader? Read(CureRequest request, Catalogue catalogue, Place at)
    {
        var method = Vocabulary.CureMethods.Read(request.Method, at.At("method"));
        if (request.Method is null)
        {
            Reader.Missing(at.At("method"));
        }

        var cut = Lookup.Cut(request.Cut, catalogue, at.At("cut"));
        var product = Lookup.Product(request.Product, catalogue, at.At("product"));
        if (cut is not null && method is { } known && known == CuringMethod.Ground != GroundProducts.AreMadeOf(cut, product))
        {
            at.At("method").Fault(
                "method-not-for-cut",
                known == CuringMethod.Ground
                    ? $"{cut.Name} is not ground: name as its product the sausage or patty that is made of it."
                    : $"{cut.Name} is ground here: what is put on it is mixed in.",
                ("method", request.Method!), ("cut", cut.Id));
        }

        var meat = Reader.Amount(request.Meat, at.At("meat"), Bounds.MeatGrams, isRequired: true, Dimension.Mass);
        var skin = Reader.Percent(request.Skin, at.At("skin"), Bounds.PercentOfPart);
        var yield = Reader.PercentBand(request.CookYield, at.At("cookYield"), Bounds.YieldPercent);
        var purpose = Vocabulary.Purposes.Read(request.Purpose, at.At("purpose"), SheetPurpose.Sheet);
        var scales = ScaleReader.Read(new BatchSheetRequest { WeighingStep = request.WeighingStep ?? UsualStep }, at);
        var drafts = FormulaReader.ReadLines(request.Lines, FormulaKind.DryBrine, catalogue, at.At("lines"));
        var goals = CureGoals.Read(request.Targets, drafts, catalogue, at);
        InRatios(drafts, meat, at.At("lines"));
        FormulaOf(drafts.ConvertAll(d => d.IsAmountLeftOut ? d with { Amount = 1, IsAmountLeftOut = false } : d), at);
        if (!at.Log.IsClean || CureGoals.Solve(goals, drafts, at.At("targets")) is not { } solved)
        {
            return null;
        }

        var formula = FormulaOf(solved.ConvertAll(d => d with { IsAmountLeftOut = false }), at);
        if (formula?.Lines.Sum(l => l.Amount) * meat!.Value / KilogramGrams / scales!.Finest.Step.Grams > MostSteps)
        {
            at.At("weighingStep").Fault(
                "step-too-fine", $"This cure would be more than {MostSteps:0} steps of the scale: give a coarser one.",
                ("most", MostSteps), ("unit", scales.Finest.Step.Unit.Symbol));
        }

        var line = new PileLine
        {
            Id = cut!.Id,
            Cut = cut,
            WeightIs = WeightBasis.Green,
            WeighedGrams = [meat!.Value],
            Product = product,
            SkinPercent = skin,
            CookYieldPercent = yield,
        };
        return at.Log.IsClean ? new CureReader(method!.Value, purpose!.Value, line, formula!, goals, scales!) : null;
    }

    // Every line per kilogram of meat; a mass goes by the meat it is for.
    private static void InRatios(List<FormulaLineDraft> drafts, double? meat, Place at)
    {
        var perKilogram = UnitTable.Get("g/kg");
        for (var i = 0; i < drafts.Count; i++)
        {
            if (drafts[i] is { IsAmountLeftOut: true })
            {
                drafts[i] = drafts[i] with { Unit = perKilogram };
            }
            else if (drafts[i] is { Amount: { } amount, Unit: { } unit })
            {
                if (unit.Dimension is not (Dimension.Mass or Dimension.Ratio))
                {
                    var allowed = UnitTable.SymbolsOf(Dimension.Mass, Dimension.Ratio).ToArray();
                    at.At(i).At("amount").At("unit").Fault(
                        "unit-not-allowed", $"A cure is weighed: give this line in {string.Join(", ", allowed)}, not {unit.Symbol}.",
                        ("value", unit.Symbol), ("allowed", allowed));
                }

                var ratio = unit.ToBase(amount) * (unit.Dimension == Dimension.Mass ? KilogramGrams / (meat ?? KilogramGrams) : 1);
                if (unit.Dimension == Dimension.Mass && meat is not null && !Bounds.LineRatio.Holds(ratio))
                {
                    at.At(i).At("amount").At("value").Fault(
                        "out-of-range", "Of a line there is no more than of the meat, and no less than a thousandth of a part per million.",
                        ("value", ratio), ("lowest", Bounds.LineRatio.Lowest), ("highest", Bounds.LineRatio.Highest), ("unit", perKilogram.Symbol));
                }

                drafts[i] = drafts[i] with { Amount = ratio, Unit = perKilogram };
            }
        }
    }

    private static Formula? FormulaOf(List<FormulaLineDraft> lines, Place at) => Formula.Create(
        new FormulaDraft
        {
            Name = "the cure",
            Kind = FormulaKind.DryBrine,
            Base = RatioBase.Green,
            Dose = null,
            DoseUnit = null,
            WrittenForGrams = null,
            WrittenForIs = WeightBasis.Green,
            Lines = lines,
        },
        at);
}
