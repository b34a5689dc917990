using System.Globalization;
using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;

namespace RubLab.Benchmarks;

/// <summary>Nanoseconds, or bytes, of one operation over its number of pieces.</summary>
public sealed class PerPieceColumn(string piecesParameter, bool isTime) : IColumn
{
    public string Id => ColumnName;

    public string ColumnName => isTime ? "ns/piece" : "B/piece";

    public bool AlwaysShow => true;

    public ColumnCategory Category => ColumnCategory.Custom;

    public int PriorityInCategory => isTime ? 0 : 1;

    public bool IsNumeric => true;

    public UnitType UnitType => UnitType.Dimensionless;

    public string Legend => isTime ? "Mean time over the number of pieces" : "Allocated bytes over the number of pieces";

    public string GetValue(Summary summary, BenchmarkCase benchmarkCase)
    {
        var report = summary[benchmarkCase];
        var total = isTime ? report?.ResultStatistics?.Mean : report?.GcStats.GetBytesAllocatedPerOperation(benchmarkCase);
        return total is { } value && benchmarkCase.Parameters[piecesParameter] is int pieces
            ? (value / pieces).ToString("0.0", CultureInfo.InvariantCulture)
            : "-";
    }

    public string GetValue(Summary summary, BenchmarkCase benchmarkCase, SummaryStyle style) => GetValue(summary, benchmarkCase);

    public bool IsDefault(Summary summary, BenchmarkCase benchmarkCase) => false;

    public bool IsAvailable(Summary summary) => true;
}
