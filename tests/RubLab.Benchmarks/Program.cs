using System.Text.Json;
using BenchmarkDotNet.Running;
using RubLab.Benchmarks;
using RubLab.Benchmarks.Http;
using RubLab.Contracts.Json;

// All:   dotnet run -c Release --project tests/RubLab.Benchmarks -- --filter '*'
// Quick: dotnet run -c Release --project tests/RubLab.Benchmarks -- --filter '*' --job short
// HTTP:  dotnet run -c Release --project tests/RubLab.Benchmarks -- http
if (args is ["http"])
{
    await SheetThroughput.RunAsync(JsonSerializer.SerializeToUtf8Bytes(Kitchen.Sheet(40), RubLabJson.Default.BatchSheetRequest));
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(Kitchen).Assembly).Run(args);
