namespace RubLab.Api.Tests;

/// <summary>Sound bodies, one for each route that takes one.</summary>
internal static class Bodies
{
    public const string Formula = """
        {"name":"Lockside pork rub","kind":"rub","dose":{"value":22,"unit":"g/kg"},
         "lines":[{"ingredient":"salt","form":"table","amount":{"value":2,"unit":"parts-by-mass"}},
                  {"ingredient":"black-pepper","form":"ground","amount":{"value":3,"unit":"parts-by-mass"}}]}
        """;

    public const string Card = """
        {"name":"The old card","kind":"rub","writtenFor":{"value":12,"unit":"lb"},"writtenForIs":"purchase",
         "lines":[{"ingredient":"salt","form":"table","amount":{"value":3,"unit":"tbsp"}},
                  {"ingredient":"paprika","amount":{"value":0.25,"unit":"cup"}}]}
        """;

    /// <summary>The body printed in the contract.</summary>
    public const string Sheet = $$$"""
        {"pile":[{"id":"shoulders","cut":"pork-shoulder","count":4,"weightEach":{"value":3.6,"unit":"kg"},"weightIs":"purchase","trimLoss":{"value":8,"unit":"%"}},
                 {"id":"legs","cut":"chicken-leg","pieces":[{"weight":{"value":310,"unit":"g"}},{"weight":{"value":298,"unit":"g"},"label":"blue tag"}],"weightIs":"green"}],
         "treatments":[{"formula":{{{Formula}}},"on":["shoulders"],"retained":{"low":90,"typical":95,"high":100,"unit":"%"}}],
         "weighingStep":{"value":1,"unit":"g"},"overage":{"value":5,"unit":"%"},"portion":{"value":170,"unit":"g"},"pieces":"all"}
        """;

    public const string SaltCheck = $$$"""
        {"pile":[{"cut":"pork-shoulder","cookYield":{"value":65,"unit":"%"}}],
         "treatments":[{"formula":{{{Formula}}},"retained":{"low":90,"typical":95,"high":100,"unit":"%"}}],
         "portion":{"value":170,"unit":"g"}}
        """;

    public const string Conversions = """
        {"items":[{"ingredient":"black-pepper","form":"ground","amount":{"value":2,"unit":"tbsp"},"to":"g"},
                  {"ingredient":"salt","amount":{"value":1,"unit":"lb"},"to":"g"}]}
        """;

    /// <summary>Every route that reads a body: method, path, a sound body, the name of a list in it.</summary>
    public static IReadOnlyDictionary<string, (HttpMethod Method, string Path, string Sound, string List)> ByRoute { get; } =
        new Dictionary<string, (HttpMethod, string, string, string)>
        {
            ["createFormula"] = (HttpMethod.Post, "/v1/formulas", Formula, "lines"),
            ["replaceFormula"] = (HttpMethod.Put, "/v1/formulas/lockside-pork-rub", Formula, "lines"),
            ["computeBatchSheet"] = (HttpMethod.Post, "/v1/batch-sheets", Sheet, "pile"),
            ["checkSalt"] = (HttpMethod.Post, "/v1/salt-checks", SaltCheck, "pile"),
            ["convertMany"] = (HttpMethod.Post, "/v1/conversions", Conversions, "items"),
        };
}
