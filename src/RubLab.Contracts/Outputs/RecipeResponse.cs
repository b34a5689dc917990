using System.Text.Json.Serialization;

namespace RubLab.Contracts.Outputs;

/// <summary>A formula as a schema.org Recipe, for programs that know recipes and not ratios.</summary>
public sealed record RecipeResponse
{
    /// <summary>The vocabulary.</summary>
    [JsonPropertyName("@context")]
    public string Context { get; init; } = "https://schema.org";

    /// <summary>The type in it.</summary>
    [JsonPropertyName("@type")]
    public string Type { get; init; } = "Recipe";

    /// <summary>Id of the formula.</summary>
    public required string Identifier { get; init; }

    /// <summary>The revision.</summary>
    public required long Version { get; init; }

    /// <summary>When the revision was stored, UTC.</summary>
    public required string DateModified { get; init; }

    /// <summary>The formula's name.</summary>
    public required string Name { get; init; }

    /// <summary>The kind of mix in words.</summary>
    public required string RecipeCategory { get; init; }

    /// <summary>What the ingredients are for, one kilogram of the base, and what they come to.</summary>
    public required string RecipeYield { get; init; }

    /// <summary>Each line in words: its ratio, and as authored.</summary>
    public required IReadOnlyList<string> RecipeIngredient { get; init; }
}
