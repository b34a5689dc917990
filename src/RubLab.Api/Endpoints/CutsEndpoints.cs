using RubLab.Contracts.Json;
using RubLab.Contracts.Reference;
using RubLab.Core.Meat;

namespace RubLab.Api.Endpoints;

internal static class CutsEndpoints
{
    public static void MapCuts(this RouteGroupBuilder api) =>
        new ReferenceRoutes<Cut, CutSummary, CutResponse>(
            "cuts", catalogue => catalogue.Cuts, item => item.Id, ReferenceAnswers.Summary, ReferenceAnswers.From,
            RubLabJson.Default.ListResponseCutSummary, RubLabJson.Default.CutResponse)
        .Map(
            api,
            ("listCuts", "The cuts of meat."),
            ("getCut", "One cut: natural sodium, trim, cook yields and salt kept in cooking, each with its source."));
}
