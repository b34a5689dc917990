namespace RubLab.Storage.Pairing;

/// <summary>The last device of a page: the next page starts after it, even if it has been unpaired since.</summary>
public sealed record DevicePosition(DateTimeOffset CreatedAt, string Id);
