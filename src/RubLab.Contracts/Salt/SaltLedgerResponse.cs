using RubLab.Contracts.Curing;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Core.Catalogues;
using RubLab.Core.Curing;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Salt;

namespace RubLab.Contracts.Salt;

/// <summary>Where the salt and sodium of one pile line come from, per kilogram and per portion.</summary>
public sealed record SaltLedgerResponse
{
    /// <summary>Sodium chloride added and kept, per kg green.</summary>
    public required QuantityBand SaltPerKgGreen { get; init; }

    /// <summary>What is weighed as salt, per kg green; not the same as sodium chloride.</summary>
    public required Quantity SaltWeighedPerKgGreen { get; init; }

    /// <summary>Put on and not kept: run off, left in the bath, wiped away.</summary>
    public required QuantityBand SaltDiscardedPerKgGreen { get; init; }

    /// <summary>Per kg of injected and drained meat; absent where nothing is injected.</summary>
    public QuantityBand? SaltPerKgInjected { get; init; }

    /// <summary>What cooks out with the juices, per kg green; absent where the retention in cooking is not known.</summary>
    public QuantityBand? SaltInJuicesPerKgGreen { get; init; }

    /// <summary>What is left after cooking, per kg cooked; absent where the cook yield is not known.</summary>
    public QuantityBand? SaltPerKgCooked { get; init; }

    /// <summary>Added and the meat's own, in mg.</summary>
    public QuantityBand? SodiumPerPortion { get; init; }

    /// <summary>The raw meat's own sodium, per kg green.</summary>
    public Quantity? OwnSodiumPerKgGreen { get; init; }

    /// <summary>One for each line of each treatment on it.</summary>
    public required IReadOnlyList<LedgerEntryResponse> Entries { get; init; }

    /// <summary>The figures held against published and common-practice ranges.</summary>
    public required IReadOnlyList<CheckResponse> Checks { get; init; }

    /// <summary>Sodium claims the cooked meat may be able to make; absent without a yield and a retention.</summary>
    public IReadOnlyList<ClaimResponse>? Claims { get; init; }

    /// <summary>Centre and end slices, where a slice, weights and a shape are known.</summary>
    public SlicesResponse? Slices { get; init; }

    public static SaltLedgerResponse From(
        SaltLedger ledger, IReadOnlyList<LimitCheck> limits, Catalogue catalogue, FindingLog findings, string pointer)
    {
        var checks = SaltCheck.Of(ledger, catalogue);
        foreach (var check in checks)
        {
            if (!check.IsComparable)
            {
                findings.Add(
                    "range-does-not-fit", pointer, check.Citation.SourceId,
                    ("product", check.Title), ("base", check.Base), ("line", Said.Line(ledger.Line.Id, ledger.Line.Cut)));
            }
        }

        GroundWater.Notice(ledger, catalogue, findings, pointer);
        return From(ledger, checks, limits, catalogue);
    }

    private static SaltLedgerResponse From(
        SaltLedger ledger, IReadOnlyList<SaltCheck> checks, IReadOnlyList<LimitCheck> limits, Catalogue catalogue) => new()
    {
        SaltPerKgGreen = PerKilogram(ledger.SaltGramsPerKilogramGreen),
        SaltWeighedPerKgGreen = new Quantity(Rounded.Exact(ledger.SaltWeighedGramsPerKilogramGreen), "g/kg"),
        SaltDiscardedPerKgGreen = PerKilogram(ledger.SaltDiscardedGramsPerKilogramGreen),
        SaltPerKgInjected = ledger.SaltGramsPerKilogramInjected is { } injected ? PerKilogram(injected) : null,
        SaltInJuicesPerKgGreen = ledger.SaltInJuicesGramsPerKilogramGreen is { } juices ? PerKilogram(juices) : null,
        SaltPerKgCooked = ledger.SaltGramsPerKilogramCooked is { } cooked ? PerKilogram(cooked) : null,
        SodiumPerPortion = ledger.SodiumMilligramsPerPortion is { } portion ? QuantityBand.From(portion, "mg", Rounded.Whole) : null,
        OwnSodiumPerKgGreen = ledger.OwnSodiumGramsPerKilogramGreen is { } own ? new Quantity(Rounded.Ledger(own), "g/kg") : null,
        Entries = ledger.Entries.Select(entry => new LedgerEntryResponse(
            entry.Treatment, entry.Line.Ingredient.Id, entry.Line.Form.Id,
            PerKilogram(entry.SaltGramsPerKilogramGreen), PerKilogram(entry.SodiumGramsPerKilogramGreen))).ToList(),
        Slices = ledger.Slices is { } slices ? new SlicesResponse(Rounded.Estimate(slices.Centre), Rounded.Estimate(slices.End)) : null,
        Checks = [.. checks.Select(CheckResponse.From), .. limits.Select(CheckResponse.From)],
        Claims = ClaimsOf(ledger, catalogue),
    };

    private static List<ClaimResponse>? ClaimsOf(SaltLedger ledger, Catalogue catalogue) => ledger.SodiumMilligramsPer100GramsEaten is { } eaten
        ? catalogue.SodiumClaims
            .Select(claim => (Claim: claim, Measured: eaten.Times(claim.PerGrams / 100)))
            .Where(c => c.Claim.Allows(c.Measured.Low))
            .Select(c => new ClaimResponse
            {
                Id = c.Claim.Id,
                Name = c.Claim.Name,
                Jurisdiction = c.Claim.Jurisdiction,
                Verdict = Vocabulary.Verdicts[c.Claim.Judge(c.Measured)],
                Measured = QuantityBand.From(c.Measured, "mg", Rounded.Whole),
                Per = new Quantity(c.Claim.PerGrams, "g"),
                Highest = c.Claim.LimitMilligrams,
                SourceId = c.Claim.Citation.SourceId,
                Locator = c.Claim.Citation.Locator,
                Confidence = Vocabulary.Confidences[c.Claim.Citation.Confidence],
            }).ToList()
        : null;

    private static QuantityBand PerKilogram(Band band) => QuantityBand.From(band, "g/kg", Rounded.Ledger);
}
