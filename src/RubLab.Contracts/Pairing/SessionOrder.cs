namespace RubLab.Contracts.Pairing;

/// <summary>What a sound request to be paired comes to.</summary>
/// <param name="Code">As <see cref="PairingCodeText"/> reads it.</param>
/// <param name="Name">Null where the device does not name itself.</param>
public sealed record SessionOrder(string Code, string? Name)
{
    /// <summary>Without the code, which would end up in a log.</summary>
    public override string ToString() => $"SessionOrder {{ Name = {Name} }}";
}
