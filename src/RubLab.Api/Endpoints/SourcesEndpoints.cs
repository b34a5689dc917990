using RubLab.Contracts.Json;
using RubLab.Contracts.Reference;
using RubLab.Core.Sources;

namespace RubLab.Api.Endpoints;

internal static class SourcesEndpoints
{
    public static void MapSources(this RouteGroupBuilder api) =>
        new ReferenceRoutes<Source, SourceResponse, SourceResponse>(
            "sources", catalogue => catalogue.Sources, item => item.Id, ReferenceAnswers.From, (item, _) => ReferenceAnswers.From(item),
            RubLabJson.Default.ListResponseSourceResponse, RubLabJson.Default.SourceResponse)
        .Map(
            api,
            ("listSources", "The sources that stand beside the numbers."),
            ("getSource", "One source."));
}
