namespace RubLab.Core.Yields;

/// <summary>One cook as a kitchen noted it.</summary>
/// <param name="Method">Way of cooking; none where it was not noted.</param>
/// <param name="BeforeGrams">Weight before: trimmed, or as bought.</param>
/// <param name="AfterGrams">Weight that left the cooker, bone included.</param>
/// <param name="IsOfPurchase">The weight before was as bought, and its trim is not known.</param>
public sealed record CookRecord(string? Method, double BeforeGrams, double AfterGrams, bool IsOfPurchase);
