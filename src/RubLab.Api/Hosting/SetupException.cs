namespace RubLab.Api.Hosting;

/// <summary>The server cannot start as it was told to; the message says why, for whoever started it.</summary>
public sealed class SetupException(string message) : Exception(message);
