using System.Globalization;
using System.Text.Json;
using BenchmarkDotNet.Running;
using RubLab.Benchmarks;
using RubLab.Benchmarks.Http;
using RubLab.Benchmarks.Page;
using RubLab.Benchmarks.Storage;
using RubLab.Contracts.Json;

// All:   dotnet run -c Release --project tests/RubLab.Benchmarks -- --filter '*'
// Quick: dotnet run -c Release --project tests/RubLab.Benchmarks -- --filter '*' --job short
// HTTP:  dotnet run -c Release --project tests/RubLab.Benchmarks -- http
// Store: dotnet run -c Release --project tests/RubLab.Benchmarks -- storage (on PostgreSQL too where RUBLAB_TEST_POSTGRES is set)
// Page:  dotnet run -c Release --project tests/RubLab.Benchmarks -- page [minutes of use, 1 if left out] (Chromium on the published output)
if (args is ["page", ..])
{
    await PageVisits.RunAsync(args is [_, var minutes] ? double.Parse(minutes, CultureInfo.InvariantCulture) : 1);
    return;
}

if (args is ["http"])
{
    await SheetThroughput.RunAsync(JsonSerializer.SerializeToUtf8Bytes(Kitchen.Sheet(40), RubLabJson.Default.BatchSheetRequest));
    return;
}

if (args is ["storage"])
{
    await StoreGrowth.RunAsync();
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(Kitchen).Assembly).Run(args);
