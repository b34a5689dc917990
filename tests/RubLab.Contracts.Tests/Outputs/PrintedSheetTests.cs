using System.Globalization;
using System.Xml;
using System.Xml.Linq;
using RubLab.Contracts.Outputs;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Scaling;

namespace RubLab.Contracts.Tests.Outputs;

public class PrintedSheetTests
{
    [Fact]
    public void The_shoulders_are_read_aloud_one_by_one() => Assert.Equal(
        [
            "Piece 1, shoulders, 3312 grams green: 73 grams of Lockside pork rub.",
            "Piece 2, shoulders, 3312 grams green: 73 grams of Lockside pork rub.",
            "Piece 3, shoulders, 3312 grams green: 73 grams of Lockside pork rub.",
            "Piece 4, shoulders, 3312 grams green: 72 grams of Lockside pork rub.",
        ],
        Cells(Print(Sheets.First()), "aloud"));

    [Fact]
    public void Every_piece_of_every_treatment_has_its_sentence_and_its_amount()
    {
        var sheet = Sheets.Full();
        var page = Print(sheet);
        var pieces = sheet.Treatments.SelectMany(t => t.Pieces!.Select(p => (Piece: p, t.Name))).ToList();
        Assert.Equal(pieces.Select(p => ReadAloud.Of(p.Piece, p.Piece.Line, p.Name)), Cells(page, "aloud"));
        Assert.Contains("Piece 5, legs, blue tag, 297.7 grams green: 0 grams of Old card.", Cells(page, "aloud"));
        Assert.All(pieces, p => Assert.Contains(Text(p.Piece.Amount), Cells(page, "weigh")));
    }

    [Fact]
    public void A_line_that_goes_by_its_cuts_id_is_called_by_its_name()
    {
        var first = Sheets.First("- /pile/0/id & - /treatments/0/on");
        var page = Print(first);
        Assert.Equal("pork-shoulder", first.Salt[0].Line);
        Assert.Equal("Piece 1, Pork shoulder, 3312 grams green: 73 grams of Lockside pork rub.", Cells(page, "aloud").First());
        Assert.Contains(page.Descendants("h3"), h => h.Value == "Pork shoulder");
        Assert.DoesNotContain("pork-shoulder", page.Root!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void What_its_ingredients_carry_stands_on_each_treatments_own_page()
    {
        var brine = Print(Sheets.Full()).Descendants("section").Single(s => s.Element("h2")!.Value == "Brine");
        Assert.Equal(
            "Allergens: soybeans (Soy sauce), wheat (Soy sauce). Read your label: Curing salt, content as on its pack; Soy sauce.",
            brine.Descendants("p").Single(p => (string?)p.Attribute("class") == "allergens").Value);
        Assert.DoesNotContain(Print(Sheets.First()).Descendants("p"), p => (string?)p.Attribute("class") == "allergens");
    }

    [Theory]
    [InlineData("rub", "291 g of it goes on the meat", "On each piece")]
    [InlineData("injection", "291 g of it goes into the meat", "Into each piece")]
    [InlineData("soak", "291 g of it goes around the meat", null)]
    public void Where_it_goes_is_said_by_its_kind(string kind, string mixed, string? pieces)
    {
        var first = Sheets.First();
        var page = Print(first with { Treatments = [first.Treatments[0] with { Kind = kind }] });
        Assert.Contains(page.Descendants("p"), p => p.Value.Contains(mixed, StringComparison.Ordinal));
        Assert.Equal(pieces, page.Descendants("caption").Select(c => c.Value).SingleOrDefault(c => c.EndsWith("each piece", StringComparison.Ordinal)));
        Assert.Equal(pieces is null, page.Root!.Value.Contains("lie in it together", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("g", 1, "1 gram of")]
    [InlineData("kg", 0.5, "0.5 kilograms of")]
    [InlineData("oz", 2.5, "2.5 ounces of")]
    [InlineData("lb", 1, "1 pound of")]
    [InlineData("mg", 20, "20 milligrams of")]
    public void Units_are_spoken_in_full(string unit, double amount, string words) => Assert.Contains(
        words, ReadAloud.Of(new SheetPieceResponse(1, "legs", null, new(300, "g"), new(amount, unit)), "legs", "Old card"), StringComparison.Ordinal);

    [Fact]
    public void Each_treatment_has_a_page_with_what_to_weigh_and_the_running_total()
    {
        var sheet = Sheets.Full();
        var page = Print(sheet);
        var sections = page.Descendants("section").ToList();
        Assert.Equal([.. sheet.Treatments.Select(t => t.Name), "Salt"], sections.Select(s => s.Element("h2")!.Value));
        Assert.All(sheet.Treatments.Zip(sections), t =>
        {
            Assert.Equal(t.First.Lines.Select(l => Text(l.RunningTotal)), Cells(t.Second, "running"));
            Assert.Equal(t.First.Lines.Select(l => Text(l.ToMix)), Cells(t.Second, "weigh").Take(t.First.Lines.Count));
            Assert.Equal(t.First.Lines.Select(l => l.Spoon?.Text ?? "weigh it"), Cells(t.Second, "spoon"));
        });
        Assert.Contains("section { break-after: page;", page.Descendants("style").Single().Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Salt_has_its_band_and_each_check_its_verdict_in_words()
    {
        var salt = Print(Sheets.First()).Descendants("section").Last().Value;
        Assert.Contains("Salt on green meat: 8.24 g/kg (7.8 to 8.67); on the scale 8.8 g/kg.", salt, StringComparison.Ordinal);
        Assert.Contains("7.5 to 15 g/kg", salt, StringComparison.Ordinal);
        Assert.Contains("Within the range. Nothing to change.", salt, StringComparison.Ordinal);
        Assert.Contains("Below the range. Add 5 g of salt per kg", salt, StringComparison.Ordinal);
    }

    [Fact]
    public void A_level_that_is_one_figure_is_called_a_level()
    {
        var salt = Print(Sheets.First("/pile/0/cut = \"beef-ground-80\"")).Descendants("section").Last().Value;
        Assert.Contains("Salt for fresh pork sausage (common practice): 15 g/kg, green", salt, StringComparison.Ordinal);
        Assert.Contains("Below the level. 6.76 g of salt per kg of green meat below this level.", salt, StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_cautions_and_the_edition_are_all_there()
    {
        var sheet = Sheets.Full();
        var text = Print(sheet).Root!.Value;
        Assert.NotEmpty(sheet.Findings);
        Assert.NotEmpty(sheet.Cautions);
        Assert.All(sheet.Findings, f => Assert.Contains(f.Message, text, StringComparison.Ordinal));
        Assert.All(sheet.Cautions, c => Assert.Contains($"{c.Text} Whose word counts: {c.DefersTo}.", text, StringComparison.Ordinal));
        Assert.Contains($"Reference data {sheet.DataVersion}.", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("/pieces = \"none\"")]
    [InlineData("/purpose = \"check\"")]
    public void It_is_a_sound_document_in_English_without_script(string edits)
    {
        var page = Print(Sheets.Full(edits));
        Assert.Equal("en", (string?)page.Root!.Attribute("lang"));
        Assert.NotEmpty(page.Descendants("title").Single().Value);
        Assert.Single(page.Descendants("h1"));
        Assert.Single(page.Descendants("main"));
        Assert.Single(page.Descendants("style"));
        Assert.DoesNotContain(page.Descendants(), e => e.Name.LocalName is "script" or "link" or "img" or "iframe" or "form");
        Assert.DoesNotContain(page.Descendants().Attributes(), a => a.Name.LocalName.StartsWith("on", StringComparison.Ordinal) || a.Name.LocalName is "style" or "href" or "src");
        Assert.All(page.Descendants("th"), th => Assert.Equal(th.Ancestors("thead").Any() ? "col" : "row", (string?)th.Attribute("scope")));
        Assert.All(page.Descendants("table"), t => Assert.Equal(t.Descendants("th").Count(h => h.Ancestors("thead").Any()), t.Descendants("tr").Last().Elements().Count()));
        Assert.All(page.Descendants("table"), t => Assert.NotEmpty(t.Element("caption")!.Value));
        var levels = page.Descendants().Where(e => e.Name.LocalName is "h1" or "h2" or "h3").Select(e => e.Name.LocalName[1] - '0').ToList();
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1));
        var ids = page.Descendants().Attributes("id").Select(a => a.Value).ToList();
        Assert.Equal(ids.Distinct(), ids);
        Assert.All(page.Descendants("section"), s => Assert.Contains((string)s.Attribute("aria-labelledby")!, ids));
    }

    [Theory]
    [InlineData("<script>alert(1)</script>")]
    [InlineData("Salt & pepper \"house\" 'rub'")]
    [InlineData("</title></style><b>")]
    [InlineData("&lt;b&gt; &amp; 🐖")]
    [InlineData("]]> --> <!--")]
    public void Hostile_names_are_only_text(string name)
    {
        var sheet = Sheets.Named(name, name);
        var text = string.Concat(PrintedSheet.Parts(sheet, Seed.Catalogue));
        var page = Print(sheet);
        Assert.Equal(name, page.Descendants("h2").First().Value);
        Assert.Equal("Batch sheet: " + name, page.Descendants("title").Single().Value);
        Assert.Equal($"Piece 1, shoulders, {name}, 3312 grams green: 291 grams of {name}.", Assert.Single(Cells(page, "aloud")));
        Assert.DoesNotContain("<script", text, StringComparison.Ordinal);
        Assert.DoesNotContain("<b>", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_check_has_salt_and_remarks_and_nothing_to_weigh()
    {
        var page = Print(Sheets.First("/purpose = \"check\""));
        Assert.Equal("Salt", Assert.Single(page.Descendants("section")).Element("h2")!.Value);
        Assert.Empty(Cells(page, "weigh"));
        Assert.Contains("there is nothing to weigh", page.Root!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_pieces_there_is_what_to_weigh_alone()
    {
        var page = Print(Sheets.First("/pieces = \"none\""));
        Assert.Equal(["122 g", "184 g"], Cells(page, "weigh"));
        Assert.Empty(Cells(page, "aloud"));
    }

    private static XDocument Print(BatchSheetResponse sheet)
    {
        var text = string.Concat(PrintedSheet.Parts(sheet, Seed.Catalogue));
        Assert.StartsWith("<!DOCTYPE html>", text, StringComparison.Ordinal);
        using var reader = XmlReader.Create(new StringReader(text), new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore });
        return XDocument.Load(reader);
    }

    private static IEnumerable<string> Cells(XContainer page, string kind) =>
        page.Descendants("td").Where(d => (string?)d.Attribute("class") == kind).Select(d => d.Value);

    private static string Text(Quantity quantity) => string.Create(CultureInfo.InvariantCulture, $"{quantity.Value} {quantity.Unit}");
}
