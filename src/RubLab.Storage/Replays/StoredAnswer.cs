namespace RubLab.Storage.Replays;

/// <summary>An HTTP answer as it was given, to be given again.</summary>
public sealed record StoredAnswer(int Status, string Headers, string Body);
