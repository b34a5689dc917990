namespace RubLab.Contracts.Pairing;

/// <summary>A device that was given a code.</summary>
public sealed record SessionRequest
{
    /// <summary>The code; small letters, spaces and hyphens do not matter.</summary>
    public string? Code { get; init; }

    /// <summary>What to call the device in the list; what the code says, or Device, if left out.</summary>
    public string? Name { get; init; }
}
