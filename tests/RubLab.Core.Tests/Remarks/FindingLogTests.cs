using RubLab.Core.Remarks;

namespace RubLab.Core.Tests.Remarks;

public sealed class FindingLogTests
{
    [Fact]
    public void A_finding_is_worded_from_the_catalogue()
    {
        var log = new FindingLog(Seed.Catalogue);

        log.Add("yield-assumed", "/pile/0", "usda-sr28-derived", ("line", "a"), ("low", 56d), ("high", 59.29999));

        var finding = Assert.Single(log.Findings);
        Assert.Equal("No cooking yield was given for a. The sheet takes 56 to 59.3 % of the weight that went in.", finding.Message);
        Assert.Equal(("yield-assumed", Severity.Info, "/pile/0", "usda-sr28-derived"), (finding.Code, finding.Severity, finding.Pointer, finding.SourceId));
        Assert.Equal(59.29999, finding.Parameters["high"]);
    }

    [Fact]
    public void Words_are_listed_with_commas()
    {
        var log = new FindingLog(Seed.Catalogue);

        log.Add("form-unnamed", null, null, ("ingredient", "Salt"), ("forms", new[] { "table", "flake" }));

        Assert.StartsWith("Salt comes as table, flake, and", log.Findings[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_words_about_the_same_field_are_noted_once()
    {
        var log = new FindingLog(Seed.Catalogue);

        log.Add("no-salt-range", "/pile/0", null, ("line", "a"));
        log.Add("no-salt-range", "/pile/0", null, ("line", "a"));
        log.Add("no-salt-range", "/pile/1", null, ("line", "a"));
        log.Add("no-salt-range", "/pile/0", null, ("line", "b"));
        log.Add("already-salted", "/pile/0", null, ("line", "a"));

        Assert.Equal(4, log.Findings.Count);
    }

    [Fact]
    public void A_code_without_words_is_a_mistake_of_the_caller() =>
        Assert.Throws<ArgumentException>(() => new FindingLog(Seed.Catalogue).Add("never-heard-of", null, null));
}
