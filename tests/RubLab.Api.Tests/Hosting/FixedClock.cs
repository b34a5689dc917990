namespace RubLab.Api.Tests.Hosting;

/// <summary>Stands still until it is moved.</summary>
internal sealed class FixedClock(DateTimeOffset now) : TimeProvider
{
    public DateTimeOffset Now { get; set; } = now;

    public override DateTimeOffset GetUtcNow() => Now;
}
