using RubLab.Core.Sources;

namespace RubLab.Core.Salt;

/// <summary>A published or common-practice salt level for a product.</summary>
/// <param name="Id">Its id, and the id of the check made against it.</param>
/// <param name="Product">The product in words.</param>
/// <param name="LowPercent">Lower bound, percent of the base; none if open.</param>
/// <param name="HighPercent">Upper bound, percent of the base; none if open.</param>
/// <param name="Base">The base the source used.</param>
/// <param name="AppliesTo">The product word cuts are matched by.</param>
/// <param name="IsPublished">False for common practice.</param>
/// <param name="Note">What to know when reading it.</param>
/// <param name="Citation">Source, locator and confidence.</param>
public sealed record SaltRange(
    string Id, string Product, double? LowPercent, double? HighPercent, string Base, string AppliesTo,
    bool IsPublished, string Note, Citation Citation)
{
    /// <summary>One figure and no range: a landmark, told beside the ranges, which no salt must hit exactly.</summary>
    public bool IsOneLevel => LowPercent is not null && LowPercent == HighPercent;

    /// <summary>What was tried, not what is advised: it says nothing of a level outside it.</summary>
    public bool IsTrial { get; init; }

    /// <summary>What a kilogram of its base is of, in words.</summary>
    public string BaseInWords => Base switch
    {
        "green" => "green meat",
        "bone-in" => "green meat with its bone",
        "injected" => "meat as injected",
        "wet-formulation" => "the whole mixture before drying",
        "finished" => "cooked meat",
        _ => Base.Replace('-', ' '),
    };
}
