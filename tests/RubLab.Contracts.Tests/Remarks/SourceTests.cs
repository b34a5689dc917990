using System.Text.Json;
using System.Text.Json.Nodes;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Ingredients;
using RubLab.Contracts.Json;
using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reference;

namespace RubLab.Contracts.Tests.Remarks;

/// <summary>Nothing is cited that the catalogue does not hold, and nothing taken from outside goes uncited.</summary>
public class SourceTests
{
    private static readonly HashSet<string> Known = Seed.Catalogue.Sources.Select(s => s.Id).ToHashSet(StringComparer.Ordinal);

    [Fact]
    public void Every_source_named_by_a_sheet_of_any_cut_is_in_the_catalogue()
    {
        foreach (var cut in Seed.Catalogue.Cuts)
        {
            var answer = Document.FirstSheet().Edit(
                $$"""/pile/0/cut = "{{cut.Id}}" & - /pile/0/trimLoss & - /treatments/0/retained & - /treatments/0/formula/lines/0/form & - /treatments/0/formula/dose & /treatments/0/formula/writtenFor = {"value":12,"unit":"lb"} & /treatments/0/formula/writtenForIs = "purchase" & /treatments/0/formula/lines/0/amount/unit = "tbsp" & /treatments/0/formula/lines/1/amount/unit = "tbsp" """)
                .SheetAnswer();
            Assert.True(Cited(answer) > 10, cut.Id);
            Assert.All(answer["salt"]![0]!["ledger"]!["checks"]!.AsArray(), c => Assert.NotEmpty((string)c!["locator"]!));
        }
    }

    [Fact]
    public void Every_source_named_by_reference_data_is_in_the_catalogue()
    {
        foreach (var ingredient in Seed.Catalogue.Ingredients)
        {
            var answer = JsonSerializer.SerializeToNode(ReferenceAnswers.From(ingredient, Seed.Catalogue), RubLabJson.Default.IngredientResponse)!;
            Assert.True(Cited(answer) >= 1 + ingredient.Measures.Count, ingredient.Id);
        }

        foreach (var cut in Seed.Catalogue.Cuts)
        {
            Assert.True(Cited(JsonSerializer.SerializeToNode(ReferenceAnswers.From(cut, Seed.Catalogue), RubLabJson.Default.CutResponse)!) > 1, cut.Id);
        }
    }

    [Fact]
    public void Every_conversion_of_every_form_cites_a_source_that_exists()
    {
        var forms = Seed.Catalogue.Ingredients.SelectMany(i => i.Forms.Where(f => f.Density is not null).Select(f => (i.Id, Form: f.Id))).ToList();
        Assert.True(forms.Count > 60);
        foreach (var (ingredient, form) in forms)
        {
            var answer = Conversions.Compute(
                new ConversionItemRequest { Ingredient = ingredient, Form = form, Amount = QuantityRequest.Of(1, "tsp"), To = "g" }, Seed.Catalogue).Value!;
            Assert.InRange(answer.Result.Typical, 0.5, 12);
            Assert.Equal(1 + answer.Findings.Count, Cited(JsonSerializer.SerializeToNode(answer, RubLabJson.Default.ConversionResponse)!));
        }
    }

    [Fact]
    public void The_example_formulas_are_sound_and_cite_sources_that_exist()
    {
        var files = Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "seed-data", "formulas"), "*.json");
        Assert.NotEmpty(files);
        foreach (var file in files)
        {
            var request = JsonSerializer.Deserialize(File.ReadAllText(file), RubLabJson.Default.FormulaRequest)!;
            var formula = FormulaAnswers.Check(request, Seed.Catalogue);
            Assert.True(formula.IsGood, $"{file}: {string.Join(", ", Document.Faults(formula.Log))}");
            var answer = FormulaAnswers.From(formula.Value, request, "id", 1, "2026-01-01T00:00:00Z", Seed.Catalogue);
            Assert.True(Cited(JsonSerializer.SerializeToNode(answer, RubLabJson.Default.FormulaResponse)!) >= formula.Value.Lines.Count(l => l.Form.Density is not null), file);
        }
    }

    [Fact]
    public void The_cautions_fit_the_meat_and_the_treatments()
    {
        var ids = Ids(Document.FirstSheet());
        Assert.Superset(new HashSet<string> { "cold-holding", "temperature-red-meat", "temperature-poultry" }, ids);
        Assert.DoesNotContain("liquid-once", ids);
        Assert.DoesNotContain("cure-is-not-salt", ids);
        Assert.DoesNotContain("temperature-ground", ids);
        Assert.Contains("liquid-once", Ids(Document.FirstSheet().Edit("""/treatments/0/formula/kind = "mop" """)));
        Assert.Contains("cure-is-not-salt", Ids(Document.FirstSheet().Edit(
            """/treatments/0/formula/lines/2 = {"ingredient":"cure-6-25","amount":{"value":0.2,"unit":"parts-by-mass"}} & /treatments/0/formula/dose/value = 10 & /pile/0/product = "other" & /pile/1/product = "other" """)));
        Assert.Contains(
            "allergens-read-your-label",
            Ids(Document.FirstSheet().Edit("""/treatments/0/formula/lines/1 = {"ingredient":"worcestershire","amount":{"value":1,"unit":"parts-by-mass"}}""")));
    }

    private static HashSet<string> Ids(Document sheet) =>
        sheet.SheetAnswer()["cautions"]!.AsArray().Select(c => (string)c!["id"]!).ToHashSet(StringComparer.Ordinal);

    // Counts the citations of an answer and holds each against the catalogue.
    private static int Cited(JsonNode? node) => node switch
    {
        JsonArray list => list.Sum(Cited),
        JsonObject members => members.Sum(m => m.Key == "sourceId" ? Exists((string)m.Value!) : Cited(m.Value)),
        _ => 0,
    };

    private static int Exists(string sourceId)
    {
        Assert.Contains(sourceId, Known);
        return 1;
    }
}
