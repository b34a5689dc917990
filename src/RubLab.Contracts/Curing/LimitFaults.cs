using RubLab.Core.Curing;
using RubLab.Core.Faults;
using RubLab.Core.Remarks;

namespace RubLab.Contracts.Curing;

/// <summary>Refuses a load above a legal level, and says by how much of the additive.</summary>
internal static class LimitFaults
{
    private const double KilogramGrams = 1000;

    /// <summary>Notes one at the place of what brings it.</summary>
    /// <param name="at">That place.</param>
    /// <param name="check">A level that is exceeded.</param>
    /// <param name="share">What is brought there: what would have to be left out of it is worked by its way into the meat.</param>
    /// <param name="greenGrams">Green weight of the meat.</param>
    /// <param name="found">How much was found and of what, as a sentence without its end.</param>
    /// <param name="line">Id of the pile line; none where there is no pile.</param>
    /// <param name="bringer">The only ingredient that brings any, and the additive in a gram of it; none where there are others.</param>
    public static void Note(
        Place at, LimitCheck check, AdditiveShare share, double greenGrams, string found, string? line = null,
        (string Name, double GramsPerGram)? bringer = null)
    {
        var over = check.OverGramsPerKilogram(share) * greenGrams / KilogramGrams;
        (string Name, object Value)[] parameters =
        [
            ("limit", check.Limit.Id), ("title", check.Limit.Title), ("additive", check.Limit.Additive),
            ("ppm", check.MeasuredPartsPerMillion!.Value.High), ("highest", check.Limit.HighPartsPerMillion!.Value),
            ("over", check.OverPartsPerMillion), ("overGrams", over),
        ];
        var inItsOwn = bringer is { } only ? $", in {Figures.AtLeast(over / only.GramsPerGram)} g of {only.Name}" : "";
        at.Fault(
            "limit-exceeded",
            $"{check.Limit.Title}: {found}. {check.Advice} That is {Figures.AtLeast(over)} g of {check.Limit.Additive} too much{inItsOwn}.",
            line is null ? parameters : [.. parameters, ("line", line)]);
    }
}
