using System.Text.Json;
using RubLab.Page.Tests.Harness;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed class WeightReadingTests(Published published)
{
    [RequiresChromiumFact]
    public async Task Lines_are_read_as_a_scale_shows_them()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        (string Written, string Read)[] cases =
        [
            ("12.4 lb", "12.4 lb"), ("5,2 kg", "5.2 kg"), ("5200 g", "5200 g"), ("5200g", "5200 g"), ("88 oz", "88 oz"),
            ("4 x 3.6 kg", "3.6 kg 3.6 kg 3.6 kg 3.6 kg"), ("2×3,6kg", "3.6 kg 3.6 kg"), ("3.6 KG * 2", "3.6 kg 3.6 kg"),
            ("12 lb 6 oz", "12.375 lb"), ("12lb6oz", "12.375 lb"), ("2 x 1 lb 8 oz", "1.5 lb 1.5 lb"), ("12 lbs", "12 lb"),
            ("7.5", "7.5 kg"), ("2 x 7.5", "7.5 kg 7.5 kg"), (".75 kg", "0.75 kg"), ("3,312 kg", "3.312 kg"), ("3.312 kg", "3.312 kg"),
            ("1.250 g", "1.25 g"), ("1,250.5 g", "1250.5 g"), ("1.250,5 g", "1250.5 g"), ("1 250 g", "1250 g"), ("1,250,000 mg", "unknown-unit"),
            ("0,950 g", "0.95 g"), ("  \t 3 kg  ", "3 kg"), ("", ""),
            ("1,250 g", "either"), ("12 lb 16 oz", "ounces"), ("0 x 3 kg", "no-count"), ("0 kg", "nothing"), ("-3 kg", "unreadable"),
            ("3 kg 4 kg", "unreadable"), ("12 4 lb", "unreadable"), ("kg", "unreadable"), ("1e3 g", "unreadable"), ("3 stone", "unknown-unit"),
            ("1.2.3 kg", "unreadable"), ("2001 x 3 kg", "too-many"), ("Infinity kg", "unreadable"), ("x", "unreadable"),
        ];
        var read = await ReadAsync(bench, "kg", cases.Select(c => c.Written));

        Assert.Equal(cases.Select(c => $"{c.Written} -> {c.Read}"), cases.Zip(read, (c, r) => $"{c.Written} -> {r}"));
    }

    [RequiresChromiumFact]
    public async Task A_mark_before_three_digits_is_asked_about_where_the_visitor_writes_thousands_so()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address, locale: "de-DE");

        Assert.Equal(["either", "1.25 g", "3.312 kg", "1250.5 g"], await ReadAsync(bench, "kg", ["1.250 g", "1,250 g", "3.312 kg", "1.250,5 g"]));
    }

    [RequiresChromiumFact]
    public async Task Faults_carry_the_line_they_are_on()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        var lines = await bench.Page.EvaluateAsync<JsonElement>(
            "async () => (await import('/js/words/weights.js')).readPile('1 kg\\r\\n\\r\\n?\\n2 kg', 'kg')");

        Assert.Equal(3, lines.GetProperty("faults")[0].GetProperty("line").GetInt32());
        Assert.Equal([1, 4], lines.GetProperty("pieces").EnumerateArray().Select(p => p.GetProperty("line").GetInt32()));
    }

    private static Task<string[]> ReadAsync(Bench bench, string bareUnit, IEnumerable<string> lines) => bench.Page.EvaluateAsync<string[]>(
        """
        async ([unit, lines]) => {
          const { readPile } = await import('/js/words/weights.js');
          return lines.map(line => {
            const { pieces, faults } = readPile(line, unit);
            return faults.length > 0 ? faults[0].code : pieces.map(({ weight }) => `${weight.value} ${weight.unit}`).join(' ');
          });
        }
        """,
        new object[] { bareUnit, lines.ToArray() });
}
