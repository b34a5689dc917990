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
    public void A_band_whose_ends_read_alike_is_said_as_one_figure()
    {
        var log = new FindingLog(Seed.Catalogue);

        log.Add("yield-assumed", null, null, ("line", "a"), ("low", 79.80001), ("high", 79.8));
        log.Add("coverage-by-factor", null, null, ("line", "a"), ("low", 2d), ("high", 2d), ("fullLow", 2d), ("fullHigh", 4d));

        Assert.Equal("No cooking yield was given for a. The sheet takes 79.8 % of the weight that went in.", log.Findings[0].Message);
        Assert.StartsWith("By the dose factors of its pieces a gets 2 g per 100 cm2; at the full dose all of them would get 2 to 4.", log.Findings[1].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_are_listed_with_commas()
    {
        var log = new FindingLog(Seed.Catalogue);

        log.Add("form-unnamed", null, null, ("ingredient", "Salt"), ("forms", new[] { "table", "flake" }));

        Assert.StartsWith("Salt comes as table, flake, and", log.Findings[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_message_says_what_a_program_is_given_by_id_or_in_grams_in_words()
    {
        var log = new FindingLog(Seed.Catalogue);

        log.Add(
            "may-fall-short", "/menu/0", null,
            ("line", Said.Line("pork-shoulder", Given.Cut("pork-shoulder"))), ("missing", new Said(3721d, "8.2 lb")), ("safe", 9000d));

        var finding = Assert.Single(log.Findings);
        Assert.Equal("Pork shoulder falls 8.2 lb short at the low end. Bought for the low end it would be 9000.", finding.Message);
        Assert.Equal(("pork-shoulder", 3721d), (finding.Parameters["line"], finding.Parameters["missing"]));
    }

    [Theory]
    [InlineData("pork-shoulder", "Pork shoulder")]
    [InlineData("pork-shoulder-2", "Pork shoulder (2)")]
    [InlineData("towpath", "Pork shoulder (towpath)")]
    public void A_line_is_called_by_its_cut_and_what_else_its_id_says(string id, string words)
    {
        var line = Said.Line(id, Given.Cut("pork-shoulder"));

        Assert.Equal((id, words), (line.Value, line.Words));
    }

    [Fact]
    public void A_message_has_the_digits_a_cook_reads_and_the_parameters_all_of_them()
    {
        var log = new FindingLog(Seed.Catalogue);

        log.Add("density-spread", "/formula", null, ("treatment", "Old card"), ("low", 27.625), ("high", 36.248));

        var finding = Assert.Single(log.Findings);
        Assert.EndsWith("from 27.6 to 36.2 % of the mix.", finding.Message, StringComparison.Ordinal);
        Assert.Equal(36.248, finding.Parameters["high"]);
    }

    [Fact]
    public void A_figure_above_a_limit_does_not_read_as_the_limit()
    {
        var log = new FindingLog(Seed.Catalogue);

        log.Add("brine-warm", "/temperature", null, ("treatment", "Lock water"), ("temperature", 4.4401), ("limit", 4.44));

        Assert.Contains("Lock water is at 4.4401 C", Assert.Single(log.Findings).Message, StringComparison.Ordinal);
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
