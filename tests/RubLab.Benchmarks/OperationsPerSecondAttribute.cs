using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Columns;

namespace RubLab.Benchmarks;

/// <summary>Adds operations per second to the table.</summary>
[AttributeUsage(AttributeTargets.Class)]
public sealed class OperationsPerSecondAttribute() : ColumnConfigBaseAttribute(StatisticColumn.OperationsPerSecond);
