namespace RubLab.Storage.Secrets;

internal sealed class SecretRow
{
    public string Value { get; init; } = "";
}
