namespace RubLab.Core.Remarks;

/// <summary>Something a computation noticed on good input.</summary>
/// <param name="Code">A stable word, documented with cause and cure.</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="Message">What was noticed, with its figures.</param>
/// <param name="Pointer">The field it is about, where there is one.</param>
/// <param name="Parameters">The figures and words of the message; values are string, double or string[].</param>
/// <param name="SourceId">Where the figure it rests on comes from.</param>
public sealed record Finding(
    string Code, Severity Severity, string Message, string? Pointer, IReadOnlyDictionary<string, object> Parameters, string? SourceId);
