using RubLab.Contracts.Yields;

namespace RubLab.Page.Exports;

/// <summary>What the kitchen recorded of cooking a cut, as this device keeps it.</summary>
internal sealed record KeptYield(string Cut, IReadOnlyList<CookRecordRequest?> Records);
