using RubLab.Core.Quantities;
using RubLab.Core.Sources;

namespace RubLab.Core.Salt;

/// <summary>A sodium claim a label may make, as far as one food alone decides it.</summary>
/// <param name="Id">Its id, and the id of the check made against it.</param>
/// <param name="Name">The claim's words.</param>
/// <param name="Jurisdiction">us, eu, uk or codex.</param>
/// <param name="LimitMilligrams">The sodium it allows.</param>
/// <param name="PerGrams">In so much of the food.</param>
/// <param name="IsBelow">The limit itself is already too much.</param>
/// <param name="Citation">Source, locator and confidence.</param>
public sealed record SodiumClaim(
    string Id, string Name, string Jurisdiction, double LimitMilligrams, double PerGrams, bool IsBelow, Citation Citation)
{
    /// <summary>Whether an amount of sodium in that much food allows the claim.</summary>
    public bool Allows(double milligrams) => IsBelow ? milligrams < LimitMilligrams : milligrams <= LimitMilligrams;

    /// <summary>A claim must hold for whatever the meat may turn out to be: the high end of the band decides.</summary>
    public Verdict Judge(Band milligrams) =>
        Allows(milligrams.High) ? Verdict.Within : Allows(milligrams.Low) ? Verdict.CannotTell : Verdict.Above;
}
