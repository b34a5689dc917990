using System.Diagnostics.CodeAnalysis;

namespace RubLab.Core.Faults;

/// <summary>Either a value or every fault that kept it from being made; see <see cref="FaultLog.ResultOf{T}"/>.</summary>
public sealed class Result<T>
    where T : class
{
    internal Result(T? value, FaultLog log)
    {
        Value = value;
        Log = log;
    }

    /// <summary>None when the log has faults.</summary>
    public T? Value { get; }

    public FaultLog Log { get; }

    [MemberNotNullWhen(true, nameof(Value))]
    public bool IsGood => Value is not null;
}
