namespace RubLab.Storage.OwnNumbers;

/// <summary>One form of an ingredient, which a density is of.</summary>
public sealed record FormKey(string IngredientId, string FormId) : IOwnNumberKey<FormKey>
{
    string IOwnNumberKey<FormKey>.First => IngredientId;

    string IOwnNumberKey<FormKey>.Second => FormId;

    public static FormKey Of(string first, string? second) => new(first, second ?? throw new ArgumentNullException(nameof(second)));
}
