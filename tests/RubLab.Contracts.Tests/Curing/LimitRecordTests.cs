using RubLab.Contracts.Salt;
using RubLab.Core.Curing;
using RubLab.Core.Quantities;

namespace RubLab.Contracts.Tests.Curing;

/// <summary>What a check of a legal level says of itself agrees: its bounds, its figure and its verdicts.</summary>
public sealed class LimitRecordTests
{
    // What a scale may lose of a level to be met, percent.
    private const double Lost = 1;

    public static TheoryData<string> Limits => [.. Seed.Catalogue.AdditiveLimits.Select(l => l.Id)];

    [Theory]
    [MemberData(nameof(Limits))]
    public void Verdict_bounds_and_figure_agree(string id)
    {
        var limit = Seed.Catalogue.AdditiveLimits.Single(l => l.Id == id);
        double[] bounds = [limit.LowPartsPerMillion ?? 0, limit.HighPartsPerMillion ?? limit.LowPartsPerMillion!.Value];
        var figures = bounds.SelectMany(b => new[] { b / 6, b * 0.98, b * 0.995, b, b * 1.01, (b * 3) + 1 }).Distinct().ToList();
        foreach (var product in limit.Products.Select(p => p == AdditiveLimit.AnyProduct ? "cooked-ham" : p).Append(null).Where(limit.HoldsFor))
        {
            foreach (var high in figures)
            {
                foreach (var low in figures.Where(f => f <= high))
                {
                    foreach (var knowledge in KnownOf(limit))
                    {
                        AssertAgrees(Record(limit, new Band(low, low, high), product, knowledge), limit, product);
                    }
                }
            }
        }
    }

    [Fact]
    public void A_level_that_holds_as_a_ceiling_alone_has_no_lowest()
    {
        var limit = Seed.Catalogue.AdditiveLimits.Single(l => l.Id == "nitrite-bacon-injection");
        var unnamed = Record(limit, Band.Exact(20), null, LoadKnowledge.Known);
        var bacon = Record(limit, Band.Exact(20), "bacon", LoadKnowledge.Known);

        Assert.Equal(("within", null, 120, "At most 120 ppm: kept."), (unnamed.Verdict, unnamed.Lowest, unnamed.Highest, unnamed.Advice));
        Assert.Equal(("below", 120, 120), (bacon.Verdict, bacon.Lowest, bacon.Highest));
    }

    // Of all else what is put on or in is known.
    private static LoadKnowledge[] KnownOf(AdditiveLimit limit) =>
        limit.Additive is AdditiveLoads.Liquid or AdditiveLoads.Fat ? Enum.GetValues<LoadKnowledge>() : [LoadKnowledge.Known];

    private static void AssertAgrees(CheckResponse check, AdditiveLimit limit, string? product)
    {
        var lowest = (check.Lowest ?? 0) * (1 - (Lost / 100));
        var highest = (check.Highest ?? double.PositiveInfinity) * (1 + 1e-9);
        Assert.Equal(limit.HighPartsPerMillion, check.Highest);
        if (check.Measured is not { } measured)
        {
            Assert.Equal(("cannot-tell", "cannot-tell"), (check.Verdict, check.TypicalVerdict));
            return;
        }

        // Two decimals of ppm are told.
        var isIn = measured.Low >= lowest - 0.005 && measured.High <= highest + 0.005;
        Assert.True(check.Verdict != "within" || isIn, $"{check.Id}, {product}: within, and {measured} is not from {check.Lowest} to {check.Highest}.");
        Assert.True(check.Verdict != "below" || measured.High < lowest + 0.005, $"{check.Id}, {product}: below, and {measured} is not.");
        Assert.True(check.Verdict != "above" || measured.Low > highest - 0.005, $"{check.Id}, {product}: above, and {measured} is not.");
        Assert.True(check.Verdict != "cannot-tell" || limit.Base == LimitBase.Finished || !isIn, $"{check.Id}, {product}: cannot tell of {measured}.");
        Assert.True(check.Verdict != "within" || !check.Advice.Contains("required", StringComparison.Ordinal), check.Advice);
        Assert.True(check.Lowest is not null || !check.Advice.Contains("required.", StringComparison.Ordinal), check.Advice);
    }

    private static CheckResponse Record(AdditiveLimit limit, Band ppm, string? product, LoadKnowledge knowledge)
    {
        var share = new AdditiveShare(0, limit.Methods.DefaultIfEmpty(CuringMethod.Injection).First(), ppm, ppm, 1000);
        return CheckResponse.From(LimitCheck.Of(
            limit, new AdditiveLoad(limit.Additive, limit.Base, [share]) { Knowledge = knowledge }, product, 0, Band.Exact(100), Lost));
    }
}
