using RubLab.Contracts.Quantities;
using RubLab.Contracts.Reading;
using RubLab.Core.Faults;
using RubLab.Core.Quantities;
using RubLab.Core.Serving;

namespace RubLab.Contracts.Serving;

/// <summary>Reads a portion: its weight, or the appetite it is for.</summary>
internal static class AppetiteReader
{
    private const string Default = "ordinary";

    /// <summary>The portion in grams: as given, else that of the appetite, else that of an ordinary one.</summary>
    public static double? Grams(QuantityRequest? portion, string? appetite, ServingReference reference, Place at)
    {
        var given = Reader.Amount(portion, at.At("portion"), Bounds.PortionGrams, isRequired: false, Dimension.Mass);
        var word = appetite ?? Default;
        if (reference.Portions.FirstOrDefault(p => p.Appetite == word) is { } known)
        {
            return portion is null ? known.Grams : given;
        }

        var allowed = reference.Portions.Select(p => p.Appetite).ToArray();
        at.At("appetite").Fault(
            "unknown-word", $"'{Shown.Text(word)}' is not one of {string.Join(", ", allowed)}.", ("value", Shown.Text(word)), ("allowed", allowed));
        return null;
    }
}
