using System.Diagnostics.CodeAnalysis;
using RubLab.Core.Faults;

namespace RubLab.Contracts.Reading;

/// <summary>Holds a list that was sent against how long it may be.</summary>
internal static class Listed
{
    /// <summary>Whether there is at least one and not too many; else the fault is noted.</summary>
    /// <param name="items">What was sent.</param>
    /// <param name="most">How many there may be.</param>
    /// <param name="one">What one of them is called.</param>
    /// <param name="many">What several are called.</param>
    /// <param name="at">The list's place.</param>
    public static bool Holds<T>([NotNullWhen(true)] IReadOnlyList<T>? items, int most, string one, string many, Place at)
    {
        if (items is null or { Count: 0 })
        {
            at.Fault("required", $"Give at least one {one}.");
            return false;
        }

        if (items.Count > most)
        {
            at.Fault("too-many", $"At most {most} {many}; this has {items.Count}.", ("most", (double)most), ("count", (double)items.Count));
            return false;
        }

        return true;
    }
}
