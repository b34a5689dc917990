namespace RubLab.Contracts.Ingredients;

/// <summary>A form's density as the kitchen weighed it: 1 to 50 fillings.</summary>
public sealed record OwnDensityRequest
{
    /// <summary>Several fillings give a narrower and surer band than one.</summary>
    public IReadOnlyList<WeighingRequest?>? Weighings { get; init; }
}
