using CsCheck;

namespace RubLab.Core.Tests;

/// <summary>Runs a law over generated cases. The seed is fixed, so every run sees the same cases.</summary>
public static class Law
{
    private const uint Stream = 1;
    private const ulong FixedSeed = 20260101;

    /// <summary>Checks the law; on a failure the case is made smaller and its seed printed.</summary>
    public static void Holds<T>(Gen<T> cases, int times, Action<T> law)
    {
        var random = new PCG(Stream, FixedSeed);
        for (var i = 0; i < times; i++)
        {
            var seed = random.ToString(random.State);
            var one = cases.Generate(random, null, out _);
            try
            {
                law(one);
            }
            catch (Exception failure)
            {
                cases.Sample(law, seed: seed, iter: 2000, threads: 1);
                throw new InvalidOperationException($"Case {i} of fixed seed {FixedSeed} fails, replayed by seed {seed}: {failure.Message}", failure);
            }
        }
    }
}
