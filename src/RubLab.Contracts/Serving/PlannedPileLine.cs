using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Serving;

/// <summary>A pile line as it would be sent: pieces as bought, to be trimmed and weighed.</summary>
/// <param name="Id">The menu line's id.</param>
/// <param name="Cut">Cut id.</param>
/// <param name="Count">How many pieces.</param>
/// <param name="WeightEach">What each is taken to weigh.</param>
/// <param name="WeightIs">purchase.</param>
/// <param name="Portion">Of this cut for one guest; absent below a gram.</param>
public sealed record PlannedPileLine(string Id, string Cut, int Count, Quantity WeightEach, string WeightIs, Quantity? Portion);
