namespace RubLab.Core.Tests.Scaling;

/// <summary>The method as a textbook states it: cut down, sort the remainders, give one each to the largest, ties to the lower number.</summary>
public static class LargestRemainder
{
    public static long[] Split(double[] exact, long total)
    {
        var whole = exact.Select(e => (long)Math.Floor(e)).ToArray();
        var left = total - whole.Sum();
        var order = Enumerable.Range(0, exact.Length).OrderByDescending(i => exact[i] - Math.Floor(exact[i])).ThenBy(i => i);
        foreach (var i in order.Take((int)left))
        {
            whole[i]++;
        }

        return whole;
    }
}
