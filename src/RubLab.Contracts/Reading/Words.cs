using System.Diagnostics.CodeAnalysis;
using RubLab.Core.Faults;

namespace RubLab.Contracts.Reading;

/// <summary>The words an enumeration is written in on the wire, both ways.</summary>
public sealed class Words<T>
    where T : struct, Enum
{
    private readonly Dictionary<string, T> _values = new(StringComparer.Ordinal);
    private readonly Dictionary<T, string> _words = [];

    public Words(params ReadOnlySpan<(string Word, T Value)> pairs)
    {
        foreach (var (word, value) in pairs)
        {
            _values.Add(word, value);
            _words.Add(value, word);
        }

        All = [.. _values.Keys];
    }

    public IReadOnlyList<string> All { get; }

    public string this[T value] => _words[value];

    /// <summary>Reads a word; an unknown one is noted with the words allowed.</summary>
    [return: NotNullIfNotNull(nameof(absent))]
    public T? Read(string? word, Place at, T? absent = null)
    {
        if (word is null)
        {
            return absent;
        }

        if (_values.TryGetValue(word, out var value))
        {
            return value;
        }

        at.Fault(
            "unknown-word", $"'{Shown.Text(word)}' is not one of {string.Join(", ", All)}.",
            ("value", Shown.Text(word)), ("allowed", All.ToArray()));
        return absent;
    }
}
