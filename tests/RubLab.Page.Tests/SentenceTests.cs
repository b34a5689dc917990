using System.Text.RegularExpressions;
using RubLab.Page.Tests.Harness;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed partial class SentenceTests(Published published)
{
    [RequiresChromiumTheory]
    [InlineData("de-DE", "Take 12.50 g out; 1234.5 ppm is 0.3 % too much.", "Take 12,50 g out; 1234,5 ppm is 0,3 % too much.")]
    [InlineData("de-DE", "9 CFR 424.21(c) allows 156.25 ppm.", "9 CFR 424.21(c) allows 156,25 ppm.")]
    [InlineData("de-DE", "9 CFR 318.10 and edition v1.2 stay, 0.5-1.25 kg does not.", "9 CFR 318.10 and edition v1.2 stay, 0,5-1,25 kg does not.")]
    [InlineData("de-DE", "Evenness takes 125,000 h; 12,345.5 g since 2015.", "Evenness takes 125.000 h; 12.345,5 g since 2015.")]
    [InlineData("de-DE", "US mesh numbers are 3.5; 4; 5.", "US mesh numbers are 3,5; 4; 5.")]
    [InlineData("de-DE", "Half of 7.", "Half of 7.")]
    [InlineData("en-US", "Take 12.50 g out of 1234.5 g.", "Take 12.50 g out of 1234.5 g.")]
    public async Task A_sentence_of_the_computation_has_its_numbers_as_the_visitor_writes_them(string locale, string written, string read)
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address, locale: locale);

        Assert.Equal(read, await bench.Page.EvaluateAsync<string>("async sentence => (await import('/js/words/said.js')).said(sentence)", written));
    }

    [RequiresChromiumFact]
    public async Task No_screen_mixes_two_ways_of_writing_numbers()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address, locale: "de-DE");
        await bench.EnterAsync("lockside-dry-brine", "pork-shoulder", "4 x 3,6 kg\n3,2 kg");
        await Filled.AllAsync(bench);
        foreach (var screen in (string[])["bench", "brine", "cure", "time", "sauce", "people", "own", "convert"])
        {
            await bench.GoAsync(screen);
            var text = await bench.Page.Locator($"#screen-{screen}").InnerTextAsync();

            Assert.Matches(Comma(), text);
            Assert.Empty(Point().Matches(text).Select(match => $"{screen}: {match.Value}"));
        }
    }

    [GeneratedRegex(@"\d,\d")]
    private static partial Regex Comma();

    // Places in a source, such as 9 CFR 424.21 or 424.21(c), are no numbers; 2.300 is written with thousands.
    [GeneratedRegex(@".{0,40}(?<![\w.]|CFR )(?![1-9]\d{0,2}\.\d{3}(?!\d))\d+\.\d+(?![\w.(]).{0,40}")]
    private static partial Regex Point();
}
