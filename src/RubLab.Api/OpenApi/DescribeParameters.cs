using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;
using RubLab.Api.Formulas;
using RubLab.Api.Http;
using RubLab.Contracts.Outputs;
using RubLab.Contracts.Reading;

namespace RubLab.Api.OpenApi;

/// <summary>Query, path and header parameters: what they are rather than the text they are bound as.</summary>
internal sealed class DescribeParameters : IOpenApiDocumentTransformer
{
    public Task TransformAsync(OpenApiDocument document, OpenApiDocumentTransformerContext context, CancellationToken cancellationToken)
    {
        document.AddComponent<IOpenApiParameter>("IfMatch", Header(
            "If-Match", "The ETag that was read; * for whatever is there.", isRequired: true, "\"r1-2026.3-d0\""));
        document.AddComponent<IOpenApiParameter>("IfNoneMatch", Header(
            "If-None-Match", "ETags held already, comma-separated: 304 if one of them still stands.", isRequired: false, "\"2026.3\""));
        var key = Header(
            Replays.Header,
            "Makes the request safe to send twice: the second gets the first answer. 1 to 200 printable characters without spaces; with another body it is refused.",
            isRequired: false, "2f1c4a52-7c07-4b8e-9b57-0f6f3d1c2a11");
        key.Schema = new OpenApiSchema { Type = JsonSchemaType.String, MaxLength = Replays.LongestKey, Pattern = "^[!-~]+$" };
        document.AddComponent<IOpenApiParameter>("IdempotencyKey", key);

        foreach (var operation in document.Paths.Values.SelectMany(p => p.Operations!.Values))
        {
            foreach (var parameter in operation.Parameters?.OfType<OpenApiParameter>() ?? [])
            {
                Describe(parameter, operation.OperationId!);
            }

            AddHeaders(operation, document);
        }

        return Task.CompletedTask;
    }

    private static void AddHeaders(OpenApiOperation operation, OpenApiDocument document)
    {
        void Add(string component) => (operation.Parameters ??= []).Add(new OpenApiParameterReference(component, document));

        if (operation.Responses!.ContainsKey("304"))
        {
            Add("IfNoneMatch");
        }

        if (operation.Responses.ContainsKey("412"))
        {
            Add("IfMatch");
        }

        if (operation.OperationId == "createFormula")
        {
            Add("IdempotencyKey");
        }
    }

    private static void Describe(OpenApiParameter parameter, string operationId)
    {
        parameter.Description = (parameter.Name, operationId) switch
        {
            ("limit", _) => "How many items.",
            ("cursor", _) => "The next of the page before; the first page if left out.",
            ("since", _) => "The number of a change: those after it; all if left out.",
            ("id", "getSource") => "Source id.",
            ("id", "getIngredient") => "Ingredient id.",
            ("id", "getCut") => "Cut id.",
            ("id", "endSession") => "Session id, as the list gives it.",
            ("id", _) => "Formula id.",
            ("revision", _) => "Revision number, from 1.",
            ("cut", _) => "Cut id.",
            ("ingredient", _) => "Ingredient id.",
            ("form", "convert") => "Form id. If left out and the forms differ by more than 15 %, the answer spans them and a finding asks.",
            ("form", _) => "Form id.",
            ("mesh", _) => "The grind as a US mesh number, instead of a form.",
            ("micrometres", _) => "The grind in micrometres, instead of a form.",
            ("value", _) => "The amount.",
            ("unit", _) => "Its unit: of mass or volume.",
            ("to", _) => "The unit asked for: of mass or volume.",
            ("table", _) => "One table alone, as text/csv: pieces (a row for each piece and treatment) or lines (a row for each formula line and treatment). Refused where the sheet would not hold it.",
            ("plot", _) => "A picture alone, as image/svg+xml: profile (salt against depth at the end of the stages) or uptake (against time). With Accept: image/svg+xml and without plot it is the profile.",
            _ => null,
        };
        parameter.Schema = SchemaOf(parameter.Name!);
        parameter.Example = (parameter.Name, operationId) switch
        {
            ("id", "getSource") => "usda-sr28",
            ("id", "getIngredient") => "black-pepper",
            ("id", "getCut") => "pork-shoulder",
            ("id", "endSession") => DeviceExamples.Id,
            ("id", _) => "lockside-pork-rub",
            ("revision", _) => 1,
            ("ingredient", _) => "black-pepper",
            ("form", _) => "ground",
            ("value", _) => 2,
            ("unit", _) => "tbsp",
            ("to", _) => "g",
            ("table", _) => "pieces",
            ("plot", _) => "profile",
            _ => null,
        };
        parameter.Required = parameter.In == ParameterLocation.Path || parameter.Name is "ingredient" or "value" or "unit" or "to";
    }

    private static OpenApiSchema SchemaOf(string name)
    {
        var schema = name switch
        {
            "limit" or "since" or "revision" => new OpenApiSchema { Type = JsonSchemaType.Integer },
            "value" or "mesh" or "micrometres" => new OpenApiSchema { Type = JsonSchemaType.Number },
            "unit" or "to" => UnitSymbols.MassOrVolume(),
            "plot" => new OpenApiSchema { Type = JsonSchemaType.String, Enum = [.. SaltingPlots.All.All.Select(w => (System.Text.Json.Nodes.JsonNode)w)] },
            "table" => new OpenApiSchema { Type = JsonSchemaType.String, Enum = [.. SheetTables.All.All.Select(w => (System.Text.Json.Nodes.JsonNode)w)] },
            _ => new OpenApiSchema { Type = JsonSchemaType.String },
        };
        switch (name)
        {
            case "limit":
                RequestRules.Whole(schema, 1, ListQuery.Most, ListQuery.Default);
                break;
            case "since":
                RequestRules.Whole(schema, 0, null, 0);
                schema.Format = "int64";
                break;
            case "revision":
                RequestRules.Whole(schema, 1, null);
                schema.Format = "int64";
                break;
            case "value":
                RequestRules.Within(schema, Bounds.Conversion);
                break;
        }

        return schema;
    }

    private static OpenApiParameter Header(string name, string description, bool isRequired, string example) => new()
    {
        Name = name,
        In = ParameterLocation.Header,
        Description = description,
        Required = isRequired,
        Schema = new OpenApiSchema { Type = JsonSchemaType.String },
        Example = example,
    };
}
