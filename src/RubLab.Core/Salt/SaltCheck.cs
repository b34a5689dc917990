using RubLab.Core.Catalogues;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Sources;

namespace RubLab.Core.Salt;

/// <summary>One ledger figure held against one published or common-practice range.</summary>
public sealed record SaltCheck
{
    private const double GramsPerKilogramPerPercent = 10;
    private const double LastBits = 1e-9;

    private SaltCheck()
    {
    }

    public required string Id { get; init; }

    public required string Title { get; init; }

    public required string Base { get; init; }

    /// <summary>The verdict on the whole band.</summary>
    public required Verdict Verdict { get; init; }

    /// <summary>The verdict on the typical value.</summary>
    public required Verdict TypicalVerdict { get; init; }

    /// <summary>In <see cref="Unit"/>, as are the bounds.</summary>
    public required Band? Measured { get; init; }

    public required double? Lowest { get; init; }

    public required double? Highest { get; init; }

    public required string Unit { get; init; }

    public required Citation Citation { get; init; }

    public required string Advice { get; init; }

    /// <summary>Grams of sodium chloride per kilogram of the base to add (above zero) or take out (below) to bring the
    /// typical value to the nearer bound; none where it is inside, or held against one level, a trial or no range of salt.</summary>
    public double? RestoreGramsPerKilogram { get; init; }

    /// <summary>False where the range's base and the line's cannot be brought together.</summary>
    public bool IsComparable => Measured is not null;

    /// <summary>Every check that fits the line's cut and what is known of it.</summary>
    public static IReadOnlyList<SaltCheck> Of(SaltLedger ledger, Catalogue catalogue)
    {
        var checks = new List<SaltCheck>();
        foreach (var range in catalogue.SaltRanges)
        {
            if (ledger.Line.SaltProducts.Contains(range.AppliesTo))
            {
                checks.Add(Against(range, ledger));
            }
        }

        if (ledger.SodiumMilligramsPerPortion is { } portion)
        {
            checks.AddRange(OfPortion(portion, catalogue));
        }

        return checks;
    }

    /// <summary>The sodium of one portion, in milligrams, against each authority's day.</summary>
    public static IEnumerable<SaltCheck> OfPortion(Band sodiumMilligrams, Catalogue catalogue) =>
        catalogue.SodiumReferences.Select(reference => Against(reference, sodiumMilligrams));

    private static SaltCheck Against(SaltRange range, SaltLedger ledger)
    {
        var measured = range.Base switch
        {
            "green" => ledger.SaltGramsPerKilogramGreen,
            "bone-in" => ledger.Line.BonePercent is 0 ? null : ledger.SaltGramsPerKilogramGreen,
            "injected" => ledger.SaltGramsPerKilogramInjected,
            "wet-formulation" => ledger.SaltGramsPerKilogramWetFormulation is { } wet
                ? Band.Exact(WetFormulation.PercentRoundedDown(wet) * GramsPerKilogramPerPercent)
                : null,
            "finished" => ledger.SaltGramsPerKilogramCooked,
            _ => (Band?)null,
        };
        var lowest = range.LowPercent * GramsPerKilogramPerPercent;
        var highest = range.HighPercent * GramsPerKilogramPerPercent;
        var typical = measured is { } m ? Judge(Band.Exact(m.Typical), lowest, highest) : Verdict.CannotTell;
        return new SaltCheck
        {
            Id = range.Id,
            Title = $"Salt for {range.Product}" + (range.IsPublished ? "" : " (common practice)"),
            Base = range.Base,
            Verdict = measured is { } band ? Judge(band, lowest, highest) : Verdict.CannotTell,
            TypicalVerdict = typical,
            Measured = measured,
            Lowest = lowest,
            Highest = highest,
            Unit = "g/kg",
            Citation = range.Citation,
            RestoreGramsPerKilogram = typical switch
            {
                _ when range.IsOneLevel || range.IsTrial => null,
                Verdict.Below => lowest - measured!.Value.Typical,
                Verdict.Above => highest - measured!.Value.Typical,
                _ => null,
            },
            Advice = measured is { } known
                ? range.IsOneLevel ? OfOneLevel(range, typical, known.Typical)
                    : range.IsTrial ? OfTrial(range, typical, known.Typical, lowest, highest)
                    : InWords(range, typical, known.Typical, lowest, highest)
                : $"This range stands on {range.Base} weight, which this line cannot be put on; no verdict.",
        };
    }

    private static SaltCheck Against(SodiumReference reference, Band milligramsPerPortion)
    {
        var percent = milligramsPerPortion.Over(reference.SodiumMilligrams).Times(100);
        // An authority's daily figure is no bound for one portion. Where it gives no guide of its own, the only
        // thing one portion can be held against is the whole day.
        var (lowest, highest) = reference.LowPercent is null && reference.HighPercent is null
            ? ((double?)null, (double?)100)
            : (reference.LowPercent, reference.HighPercent);
        return new SaltCheck
        {
            Id = reference.Id,
            Title = $"Sodium in one portion against {reference.Name}",
            Base = "portion",
            Verdict = Judge(percent, lowest, highest),
            TypicalVerdict = Judge(Band.Exact(percent.Typical), lowest, highest),
            Measured = percent,
            Lowest = lowest,
            Highest = highest,
            Unit = "%",
            Citation = reference.Citation,
            Advice = $"About {Figures.Read(milligramsPerPortion.Typical)} mg, {Read(percent.Typical)} % of {Figures.Exact(reference.SodiumMilligrams)} mg a day; "
                + $"up to {Read(percent.High)} % at the high end. A day's figure is no bound for one portion.",
        };

        // Written so that it stands to the bound it is nearer to as the verdict says.
        string Read(double value) => Figures.Read(
            value, lowest is { } low && (highest is not { } high || value - low < high - value) ? low : highest!.Value);
    }

    private static Verdict Judge(Band measured, double? lowest, double? highest)
    {
        if (measured.High < lowest)
        {
            return Verdict.Below;
        }

        if (measured.Low > highest)
        {
            return Verdict.Above;
        }

        return !(measured.Low < lowest) && !(measured.High > highest) ? Verdict.Within : Verdict.CannotTell;
    }

    private static string InWords(SaltRange range, Verdict typical, double measured, double? lowest, double? highest) => typical switch
    {
        Verdict.Below => $"Add {Change(lowest!.Value - measured)} g of salt per kg of {range.BaseInWords} to reach the low end.",
        Verdict.Above => $"Take {Change(measured - highest!.Value)} g of salt per kg of {range.BaseInWords} out to come down to the high end.",
        _ => "Nothing to change.",
    };

    private static string OfTrial(SaltRange range, Verdict typical, double measured, double? lowest, double? highest) => typical switch
    {
        Verdict.Below => $"{Figures.Read(lowest!.Value - measured)} g of salt per kg of {range.BaseInWords} below the lowest level that was tried. A trial is no advice.",
        Verdict.Above => $"{Figures.Read(measured - highest!.Value)} g of salt per kg of {range.BaseInWords} above the highest level that was tried. A trial is no advice.",
        _ => "Among the levels that were tried. A trial is no advice.",
    };

    // Of salt nobody weighs less than a hundredth of a gram to the kilogram.
    private static string Change(double grams) => Figures.AtLeast(Math.Ceiling((grams * 100) - LastBits) / 100);

    // Single levels of one product lie apart: each advising to hit itself, they would send a cook to and fro.
    private static string OfOneLevel(SaltRange range, Verdict typical, double measured)
    {
        var apart = $"{Figures.Read(Math.Abs(measured - (range.LowPercent!.Value * GramsPerKilogramPerPercent)))} g of salt per kg of {range.BaseInWords}";
        return typical switch
        {
            Verdict.Below => $"{apart} below this level. It is one figure to compare with, not a range to be in.",
            Verdict.Above => $"{apart} above this level. It is one figure to compare with, not a range to be in.",
            _ => "At this level.",
        };
    }
}
