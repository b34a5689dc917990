using System.Text.Json.Serialization;
using Microsoft.AspNetCore.Http.Json;
using RubLab.Api.Callers;
using RubLab.Api.Http;
using RubLab.Api.OpenApi;
using RubLab.Contracts.Json;
using RubLab.Contracts.Outputs;

namespace RubLab.Api.Hosting;

/// <summary>The framework services the API needs, configured strictly.</summary>
public static class Services
{
    private const long LargestBody = 4 * 1024 * 1024;

    // Twice what a browser sends: a path or cursor that is merely too long is then answered as one that names nothing.
    private const int LongestRequestLine = 16 * 1024;

    public static WebApplicationBuilder AddRubLab(this WebApplicationBuilder builder, HostSettings settings)
    {
        builder.Logging.AddFilter("Microsoft", LogLevel.Warning);

        // Why it cannot start is said in one line by the program itself.
        builder.Logging.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.Critical);
        // The page's files from where they lie, when run unpublished too; but not the reloading of changed files, whose
        // route for any path would take the place of "method not allowed".
        builder.WebHost.UseStaticWebAssets();
        builder.Configuration["ReloadStaticAssetsAtRuntime"] = "false";
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = LargestBody;
            kestrel.Limits.MaxRequestLineSize = LongestRequestLine;
        });
        builder.Services.Configure<RouteHandlerOptions>(o => o.ThrowOnBadRequest = true);
        builder.Services.Configure<JsonOptions>(o =>
        {
            var json = o.SerializerOptions;
            json.TypeInfoResolverChain.Insert(0, RubLabJson.Default);
            json.TypeInfoResolverChain.Insert(1, RecipeJson.Default);
            json.PropertyNameCaseInsensitive = false;
            json.UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow;
            json.AllowDuplicateProperties = false;
            json.NumberHandling = JsonNumberHandling.Strict;
            json.DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull;
            json.MaxDepth = RubLabJson.Default.Options.MaxDepth;
        });
        builder.Services.AddExceptionHandler<UnreadableRequests>();
        builder.Services.AddRateLimits(settings);
        builder.Services.AddRubLabOpenApi();
        return builder;
    }

    /// <summary>The order of the pipeline: problems outermost, then who may, then what is there.</summary>
    public static WebApplication UseRubLab(this WebApplication app)
    {
        app.UseExceptionHandler(handler => handler.Run(http => Problems.WriteAsync(http, ProblemTypes.Broken)));
        app.UseStatusCodePages(context =>
        {
            HeadRequests.AddToAllow(context.HttpContext.Response.Headers);
            return Problems.WriteAsync(context.HttpContext, ProblemTypes.OfStatus(context.HttpContext.Response.StatusCode));
        });
        app.UseMiddleware<SafetyHeaders>();
        app.UseMiddleware<HeadRequests>();
        app.UseDefaultFiles();
        app.UseRouting();
        app.UseMiddleware<Access>();
        app.UseRateLimiter();
        app.UseMiddleware<Acceptable>();
        app.UseMiddleware<KnownQuery>();
        app.UseMiddleware<JsonBodies>();
        return app;
    }
}
