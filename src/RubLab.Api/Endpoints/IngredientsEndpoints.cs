using RubLab.Contracts.Json;
using RubLab.Contracts.Reference;
using RubLab.Core.Ingredients;

namespace RubLab.Api.Endpoints;

internal static class IngredientsEndpoints
{
    public static void MapIngredients(this RouteGroupBuilder api) =>
        new ReferenceRoutes<Ingredient, IngredientSummary, IngredientResponse>(
            "ingredients", catalogue => catalogue.Ingredients, item => item.Id, ReferenceAnswers.Summary, ReferenceAnswers.From,
            RubLabJson.Default.ListResponseIngredientSummary, RubLabJson.Default.IngredientResponse)
        .Map(
            api,
            ("listIngredients", "The ingredients, by group and name as in the reference data."),
            ("getIngredient", "One ingredient: composition, forms with their density bands, household measures."));
}
