namespace RubLab.Api.OpenApi;

/// <summary>Members that mean the same wherever they stand.</summary>
internal static class CommonMembers
{
    private static readonly Dictionary<string, string> Descriptions = new(StringComparer.Ordinal)
    {
        ["value"] = "The number.",
        ["low"] = "The low end.",
        ["typical"] = "The most likely value.",
        ["high"] = "The high end.",
        ["unit"] = "The unit symbol.",
        ["id"] = "Its id.",
        ["name"] = "Its name.",
        ["kind"] = "The kind of mix.",
        ["base"] = "What the ratios stand on.",
        ["species"] = "The animal.",
        ["ingredient"] = "Ingredient id.",
        ["form"] = "Form id.",
        ["density"] = "Its bulk density.",
        ["sourceId"] = "Id of the source.",
        ["locator"] = "Where in the source.",
        ["confidence"] = "How far the figure can be trusted.",
        ["findings"] = "What the computation noticed.",
        ["cautions"] = "What must be said for safety.",
        ["dataVersion"] = "The edition of the reference data.",
    };

    public static string? DescriptionOf(string member) => Descriptions.GetValueOrDefault(member);
}
