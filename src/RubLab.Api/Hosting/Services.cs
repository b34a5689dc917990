using System.Text.Json.Serialization;
using Microsoft.AspNetCore.Http.Json;
using RubLab.Api.Http;
using RubLab.Api.OpenApi;
using RubLab.Contracts.Json;

namespace RubLab.Api.Hosting;

/// <summary>The framework services the API needs, configured strictly.</summary>
public static class Services
{
    private const long LargestBody = 4 * 1024 * 1024;

    public static WebApplicationBuilder AddRubLab(this WebApplicationBuilder builder)
    {
        builder.Logging.AddFilter("Microsoft", LogLevel.Warning);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = LargestBody;
        });
        builder.Services.Configure<RouteHandlerOptions>(o => o.ThrowOnBadRequest = true);
        builder.Services.Configure<JsonOptions>(o =>
        {
            var json = o.SerializerOptions;
            json.TypeInfoResolverChain.Insert(0, RubLabJson.Default);
            json.PropertyNameCaseInsensitive = false;
            json.UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow;
            json.AllowDuplicateProperties = false;
            json.NumberHandling = JsonNumberHandling.Strict;
            json.DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull;
            json.MaxDepth = RubLabJson.Default.Options.MaxDepth;
        });
        builder.Services.AddExceptionHandler<UnreadableRequests>();
        builder.Services.AddRubLabOpenApi();
        return builder;
    }

    /// <summary>The order of the pipeline: problems outermost, then who may, then what is there.</summary>
    public static WebApplication UseRubLab(this WebApplication app)
    {
        app.UseExceptionHandler(handler => handler.Run(http => Problems.WriteAsync(http, ProblemTypes.Broken)));
        app.UseStatusCodePages(context => context.HttpContext.Response.HasStarted
            ? Task.CompletedTask
            : Problems.WriteAsync(context.HttpContext, ProblemTypes.OfStatus(context.HttpContext.Response.StatusCode)));
        app.UseMiddleware<SafetyHeaders>();
        app.UseRouting();
        app.UseMiddleware<Access>();
        app.UseMiddleware<Acceptable>();
        return app;
    }
}
