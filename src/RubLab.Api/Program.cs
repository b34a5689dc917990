using RubLab.Api.Callers;
using RubLab.Api.Endpoints;
using RubLab.Api.Hosting;
using RubLab.Api.Http;
using RubLab.Api.OpenApi;
using RubLab.Storage;
using RubLab.Storage.Refusals;

if (args is ["--health", var address])
{
    return await HealthProbe.AskAsync(address);
}

var builder = WebApplication.CreateBuilder(new WebApplicationOptions { Args = args, ContentRootPath = AppContext.BaseDirectory });
if (string.IsNullOrEmpty(builder.Configuration[WebHostDefaults.ServerUrlsKey]) && !builder.Configuration.GetSection("Kestrel:Endpoints").Exists())
{
    builder.WebHost.UseUrls(HostSettings.DefaultUrl);
}

try
{
    var settings = HostSettings.From(builder.Configuration);
    var catalogue = SeedFolder.ReadCatalogue();
    await using var database = await Database.OpenAsync(settings.Data, TimeProvider.System);
    var secrets = await StoreSetup.PrepareAsync(database, catalogue);
    if (settings.NewKeyName is { } name)
    {
        Console.WriteLine(await StoreSetup.IssueKeyAsync(database, name, settings.Scopes));
        return 0;
    }

    var codes = new PairingCodes(secrets.PairingSalt);
    if (settings.NewCodeName is { } device)
    {
        var code = await StoreSetup.IssueCodeAsync(database, codes, device, settings.Scopes);
        Console.WriteLine(code.Code);
        Console.Error.WriteLine($"Open the page on the device and enter this code by {code.ExpiresAt}; it pairs one device ({string.Join(", ", code.Scopes)}).");
        return 0;
    }

    builder.AddRubLab(settings);
    builder.Services.AddSingleton(catalogue).AddSingleton(database).AddSingleton(new Cursors(secrets.CursorKey)).AddSingleton(settings).AddSingleton<Keys>()
        .AddSingleton(TimeProvider.System).AddSingleton<KitchenCatalogues>().AddSingleton(codes).AddSingleton<PairingTries>().AddSingleton<Devices>();

    await using var app = builder.Build();
    app.UseRubLab();
    var api = app.MapGroup("/v1");
    api.MapUnits();
    api.MapSources();
    api.MapIngredients();
    api.MapCuts();
    api.MapConversions();
    api.MapDensities();
    api.MapFormulas();
    api.MapFormulaChanges();
    api.MapChanges();
    api.MapYields();
    api.MapPurchasePlans();
    api.MapPortionCounts();
    api.MapShoppingLists();
    api.MapBatchSheets();
    api.MapSaltChecks();
    api.MapSauces();
    api.MapBrines();
    api.MapPairingCodes();
    api.MapSessions();
    api.MapCures();
    api.MapSaltingTimes();
    app.MapStaticAssets();
    app.MapHealth();
    app.MapProblems();
    app.MapOpenApi();
    app.UseSwaggerUI(ui => ui.SwaggerEndpoint(OpenApiSetup.Path, "RubLab v1"));

    await Listening.StartAsync(app);
    await Exposure.CheckAsync(app.Services.GetRequiredService<Microsoft.AspNetCore.Hosting.Server.IServer>(), settings, database);
    Console.WriteLine(Welcome.Text(app.Urls, !app.Services.GetRequiredService<Keys>().MayBeKeyless, database.Location, catalogue.Version));
    await app.WaitForShutdownAsync();
    return 0;
}
catch (Exception e) when (e is SetupException or StorageException or IOException)
{
    Console.Error.WriteLine($"RubLab cannot start: {e.Message}");
    return 1;
}
