using BenchmarkDotNet.Attributes;

namespace RubLab.Benchmarks;

/// <summary>Adds the mean time and the bytes per piece to the table.</summary>
/// <param name="piecesParameter">The benchmark's parameter that says how many pieces there are.</param>
[AttributeUsage(AttributeTargets.Class)]
public sealed class PerPieceAttribute(string piecesParameter)
    : ColumnConfigBaseAttribute(new PerPieceColumn(piecesParameter, isTime: true), new PerPieceColumn(piecesParameter, isTime: false))
{
    public string PiecesParameter { get; } = piecesParameter;
}
