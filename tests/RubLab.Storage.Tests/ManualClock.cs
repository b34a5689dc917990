namespace RubLab.Storage.Tests;

/// <summary>Stands still until it is moved.</summary>
public sealed class ManualClock : TimeProvider
{
    private DateTimeOffset _now = new(2026, 3, 14, 9, 26, 53, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => _now;

    public DateTimeOffset Advance(TimeSpan by) => _now += by;
}
