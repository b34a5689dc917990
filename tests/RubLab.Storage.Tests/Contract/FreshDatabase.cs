namespace RubLab.Storage.Tests.Contract;

/// <summary>An empty store of one engine, gone after its test. Its constructor does nothing yet.</summary>
public abstract class FreshDatabase : IAsyncDisposable
{
    public ManualClock Clock { get; } = new();

    /// <summary>Why this engine cannot be tested here; null if it can.</summary>
    public virtual string? Missing => null;

    /// <summary>Opens the store, as another process on it would the second time.</summary>
    public abstract Task<Database> OpenAsync();

    /// <summary>Runs SQL past the stores.</summary>
    public abstract Task ExecuteAsync(string sql);

    public abstract ValueTask DisposeAsync();
}
