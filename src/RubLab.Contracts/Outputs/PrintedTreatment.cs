using RubLab.Contracts.Scaling;
using RubLab.Core.Catalogues;

namespace RubLab.Contracts.Outputs;

/// <summary>The page of one treatment: what to weigh, and how much goes on each piece.</summary>
internal static class PrintedTreatment
{
    private const string Into = "into";
    private const string Around = "around";

    public static IEnumerable<string> Parts(SheetTreatmentResponse treatment, int number, Catalogue catalogue)
    {
        var name = Html.Text(treatment.Name);
        var where = Where(treatment.Kind);
        yield return $"""
            <section aria-labelledby="treatment-{number}">
            <h2 id="treatment-{number}">{name}</h2>
            <p>{Html.Text(Use(treatment))}</p>
            <p>Mix <strong>{PrintedSheet.Quantity(treatment.ToMix)}</strong>; <strong>{PrintedSheet.Quantity(treatment.OnMeat)}</strong> of it goes {where} the meat.</p>{BoilDown(treatment)}
            <table>
            <caption>Weigh</caption>
            <thead><tr><th scope="col">Ingredient</th><th scope="col">Weigh</th><th scope="col">Scale shows</th><th scope="col">In spoons, about</th></tr></thead>
            <tbody>

            """;
        foreach (var line in treatment.Lines)
        {
            yield return $"""
                <tr><th scope="row">{Html.Text(IngredientNames.Of(line.Ingredient, line.Form, catalogue))}</th><td class="weigh">{PrintedSheet.Quantity(line.ToMix)}</td><td class="running">{PrintedSheet.Quantity(line.RunningTotal)}</td><td class="spoon">{Html.Text(line.Spoon?.Text ?? "weigh it")}</td></tr>

                """;
        }

        yield return $"</tbody>\n</table>\n{Allergens(treatment, catalogue)}";
        if (where == Around)
        {
            yield return "<p>All pieces lie in it together, covered and cold.</p>\n";
        }
        else if (treatment.Pieces is { } pieces)
        {
            yield return $"""
                <table>
                <caption>{(where == Into ? "Into" : "On")} each piece</caption>
                <thead><tr><th scope="col">Piece</th><th scope="col">Put {(where == Into ? "in" : "on")}</th><th scope="col">Read aloud</th></tr></thead>
                <tbody>

                """;
            foreach (var piece in pieces)
            {
                yield return $"""
                    <tr><th scope="row">{piece.Number}</th><td class="weigh">{PrintedSheet.Quantity(piece.Amount)}</td><td class="aloud">{Html.Text(ReadAloud.Of(piece, LineNames.Of(piece.Line, catalogue), treatment.Name))}</td></tr>

                    """;
            }

            yield return "</tbody>\n</table>\n";
        }

        yield return "</section>\n";
    }

    private static string Where(string kind) => kind switch
    {
        "injection" => Into,
        "soak" => Around,
        _ => "on",
    };

    private static string Allergens(SheetTreatmentResponse treatment, Catalogue catalogue)
    {
        string Name(string ingredient) => IngredientNames.Of(ingredient, null, catalogue);
        var known = treatment.Allergens.Select(a => $"{a.Allergen.Replace('-', ' ')} ({string.Join("; ", a.Ingredients.Select(Name))})");
        string[] sentences =
        [
            .. treatment.Allergens.Count > 0 ? [$"Allergens: {string.Join(", ", known)}."] : Array.Empty<string>(),
            .. treatment.ReadYourLabel.Count > 0 ? [$"Read your label: {string.Join("; ", treatment.ReadYourLabel.Select(Name))}."] : Array.Empty<string>(),
        ];
        return sentences.Length == 0 ? "" : $"<p class=\"allergens\"><strong>{Html.Text(string.Join(" ", sentences))}</strong></p>\n";
    }

    private static string BoilDown(SheetTreatmentResponse treatment) => treatment.BoilDownTo is { } left
        ? $"\n<p>Boil it down until the pot holds <strong>{PrintedSheet.Quantity(left)}</strong>.</p>"
        : "";

    private static string Use(SheetTreatmentResponse treatment)
    {
        var kind = char.ToUpperInvariant(treatment.Kind[0]) + treatment.Kind[1..].Replace('-', ' ');
        var stage = treatment.Stage switch
        {
            "before" => ", before cooking",
            "during" => ", during cooking",
            "wrap" => ", in the wrap",
            "after" => ", after cooking",
            _ => "",
        };
        var times = treatment.Applications == 1 ? "" : $" The amounts are for {treatment.Applications} applications together.";
        return $"{kind}{stage}: {PrintedSheet.Ratio(treatment.Dose)} of {BaseWords.Of(treatment.Base)}.{times}";
    }
}
