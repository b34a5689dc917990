namespace RubLab.Core.Faults;

/// <summary>One broken rule in what a person sent.</summary>
/// <param name="Pointer">JSON pointer (RFC 6901) to the field.</param>
/// <param name="Code">A stable word for the rule.</param>
/// <param name="Detail">The reason in plain words, naming the value and what is allowed.</param>
/// <param name="Parameters">The figures and words of the message; values are string, double or string[].</param>
public sealed record Fault(string Pointer, string Code, string Detail, IReadOnlyDictionary<string, object> Parameters)
{
    /// <summary>Notes the same fault at another place, for a document that another one was made from.</summary>
    public void NoteAt(Place place) => place.Fault(Code, Detail, Parameters.Select(p => (p.Key, p.Value)).ToArray());
}
