using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Contracts.Scaling;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Formulas;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;

namespace RubLab.Contracts.Brining;

/// <summary>A request for a liquid as read: the members its kind has, in base units.</summary>
internal sealed record BrineReader
{
    public required FormulaKind Kind { get; init; }

    public required Cut? Cut { get; init; }

    public required BrinePieces Pieces { get; init; }

    public required double? DoseGramsPerKilogram { get; init; }

    public required double Celsius { get; init; }

    public required BrineLines Lines { get; init; }

    public required double LossFraction { get; init; }

    public required double LossGrams { get; init; }

    public required double? BowlGrams { get; init; }

    public required Band? RetainedPercent { get; init; }

    public required WeighedBackPieces? WeighedBack { get; init; }

    public required SoakReader? Soak { get; init; }

    /// <summary>What is made of the meat; none when nobody said.</summary>
    public required string? Product { get; init; }

    public required double? SkinPercent { get; init; }

    public required SheetPurpose Purpose { get; init; }

    public static BrineReader? Read(BrineRequest request, Catalogue catalogue, FindingLog findings, Place at)
    {
        var before = at.Log.Count;
        var kind = Vocabulary.Brines.Read(request.Kind, at.At("kind"));
        if (request.Kind is null)
        {
            Reader.Missing(at.At("kind"));
        }

        var cut = request.Cut is null ? null : Lookup.Cut(request.Cut, catalogue, at.At("cut"));
        var pieces = BrinePieces.Read(request, at);
        var dose = Reader.Amount(
            request.Dose, at.At("dose"), kind == FormulaKind.Soak ? Bounds.SoakGramsPerKilogram : BoundsOfBrines.PumpGramsPerKilogram,
            isRequired: kind == FormulaKind.Injection, Dimension.Ratio);
        var celsius = Reader.Amount(request.Temperature, at.At("temperature"), BoundsOfBrines.LiquidCelsius, isRequired: false, Dimension.Temperature);
        var (lossFraction, lossGrams) = ReadLoss(request.Loss, at.At("loss"));
        var bowl = ScaleReader.ReadBowl(request.Bowl, at.At("bowl"));
        var retained = RetainedReader.Read(request.Retained, at.At("retained"));
        var weighedBack = WeighedBackPieces.Read(request.WeighedBack, at.At("weighedBack"));
        RefuseOthers(request, kind, at);
        var soak = kind == FormulaKind.Soak ? SoakReader.Read(request, cut, at) : null;
        var product = Lookup.Product(request.Product, catalogue, at.At("product"));
        var skin = Reader.Percent(request.Skin, at.At("skin"), Bounds.PercentOfPart);
        var purpose = Vocabulary.Purposes.Read(request.Purpose, at.At("purpose"), SheetPurpose.Sheet);
        var lines = BrineLines.Read(request, kind ?? FormulaKind.Injection, catalogue, findings, at);
        if (kind is null || pieces is null || lines is null || at.Log.Count > before)
        {
            return null;
        }

        return new BrineReader
        {
            Kind = kind.Value,
            Cut = cut,
            Pieces = pieces,
            DoseGramsPerKilogram = dose,
            Celsius = celsius ?? catalogue.Brines.AssumedCelsius,
            Lines = lines,
            LossFraction = lossFraction,
            LossGrams = lossGrams,
            BowlGrams = bowl,
            RetainedPercent = retained,
            WeighedBack = weighedBack,
            Soak = soak,
            Product = product,
            SkinPercent = skin,
            Purpose = purpose.GetValueOrDefault(),
        };
    }

    private static (double Fraction, double Grams) ReadLoss(QuantityRequest? loss, Place at)
    {
        if (loss is null)
        {
            return (0, 0);
        }

        var value = Reader.Authored(
            loss, at, unit => unit.Dimension == Dimension.Ratio ? BoundsOfBrines.LossGramsPerKilogram : BoundsOfBrines.LossGrams,
            out var written, Dimension.Ratio, Dimension.Mass);
        var inBase = value is { } number ? written!.ToBase(number) : 0;
        return written?.Dimension == Dimension.Ratio ? (inBase / 1000, 0) : (0, inBase);
    }

    private static void RefuseOthers(BrineRequest request, FormulaKind? kind, Place at)
    {
        (string Name, object? Value)[] ofSoaks =
        [
            ("time", request.Time), ("liquid", request.Liquid), ("meatWater", request.MeatWater), ("saltInMeat", request.SaltInMeat),
            ("thickness", request.Thickness), ("shape", request.Shape), ("diffusivity", request.Diffusivity), ("vessel", request.Vessel),
        ];
        (string Name, object? Value)[] ofInjections = [("retained", request.Retained), ("weighedBack", request.WeighedBack)];
        if (kind is not { } known)
        {
            return;
        }

        var word = Vocabulary.Brines[known];
        foreach (var (name, value) in known == FormulaKind.Soak ? ofInjections : ofSoaks)
        {
            if (value is not null)
            {
                at.At(name).Fault("not-for-kind", $"{name} means nothing for a formula of kind {word}.", ("kind", word));
            }
        }
    }
}
