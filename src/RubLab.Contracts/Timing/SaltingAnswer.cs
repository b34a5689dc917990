using RubLab.Core.Timing;

namespace RubLab.Contracts.Timing;

/// <summary>An answer on salting, and what a curve over time is drawn from.</summary>
/// <param name="Response">As it is written.</param>
/// <param name="Times">As it was computed.</param>
public sealed record SaltingAnswer(SaltingTimesResponse Response, SaltingTimes Times);
