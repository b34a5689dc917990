using BenchmarkDotNet.Running;

// All:   dotnet run -c Release --project tests/RubLab.Benchmarks -- --filter '*'
// Quick: dotnet run -c Release --project tests/RubLab.Benchmarks -- --filter '*' --job short
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
