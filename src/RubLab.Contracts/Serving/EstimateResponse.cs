namespace RubLab.Contracts.Serving;

/// <summary>An exact figure or a band, as it would be sent.</summary>
/// <param name="Value">The exact figure; absent for a band.</param>
/// <param name="Low">The low end of a band.</param>
/// <param name="Typical">Its most likely value.</param>
/// <param name="High">The high end of a band.</param>
/// <param name="Unit">Percent.</param>
public sealed record EstimateResponse(double? Value, double? Low, double? Typical, double? High, string Unit);
