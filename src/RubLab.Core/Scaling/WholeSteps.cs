namespace RubLab.Core.Scaling;

/// <summary>
/// Turns exact amounts into whole weighing steps that sum to a whole total: every amount is cut down to a whole
/// step and the steps left over go to the largest remainders, ties to the lower number.
/// </summary>
public static class WholeSteps
{
    // A digit's table is cleared on every pass: narrow digits suit few amounts, wide ones many.
    private const int FewDigitBits = 8;
    private const int ManyDigitBits = 11;
    private const int Many = 4096;

    /// <summary>The nearest whole number of steps, half up.</summary>
    public static long Nearest(double exactSteps)
    {
        // Adding a half first would itself round: up from just below a half, and to even numbers above 2^52.
        var down = Math.Floor(exactSteps);
        return (long)down + (exactSteps - down >= 0.5 ? 1 : 0);
    }

    /// <summary>Splits a total over amounts in time linear in their number.</summary>
    /// <param name="exactSteps">The amounts in steps, not negative.</param>
    /// <param name="total">Whole steps to give out: the nearest to the sum of the amounts.</param>
    /// <param name="whole">Receives the whole steps, one per amount.</param>
    /// <exception cref="ArgumentException">The total is not within one step per amount of their sum.</exception>
    public static void Split(ReadOnlySpan<double> exactSteps, long total, Span<long> whole)
    {
        long given = 0;
        for (var i = 0; i < exactSteps.Length; i++)
        {
            var down = (long)Math.Floor(exactSteps[i]);
            whole[i] = down;
            given += down;
        }

        var left = total - given;
        if (left < 0 || left > exactSteps.Length)
        {
            throw new ArgumentException("The total does not belong to these amounts.", nameof(total));
        }

        if (left > 0)
        {
            GiveOut(exactSteps, (int)left, whole);
        }
    }

    private static void GiveOut(ReadOnlySpan<double> exactSteps, int left, Span<long> whole)
    {
        var threshold = LargestKey(exactSteps, left, out var atThreshold);
        for (var i = 0; i < exactSteps.Length; i++)
        {
            var key = RemainderKey(exactSteps[i]);
            if (key > threshold)
            {
                whole[i]++;
            }
            else if (key == threshold && atThreshold > 0)
            {
                whole[i]++;
                atThreshold--;
            }
        }
    }

    // The k-th largest remainder by radix selection: the bits of non-negative doubles order as the doubles do, so
    // counting one digit at a time from the top finds the key in a fixed number of passes, whatever the input.
    private static ulong LargestKey(ReadOnlySpan<double> exactSteps, int k, out int atThreshold)
    {
        var digitBits = exactSteps.Length < Many ? FewDigitBits : ManyDigitBits;
        Span<int> counts = stackalloc int[1 << digitBits];
        ulong prefix = 0, mask = 0;
        for (var shift = 64 - digitBits; ; shift -= digitBits)
        {
            var down = Math.Max(shift, 0);
            var width = shift < 0 ? digitBits + shift : digitBits;
            counts.Clear();
            foreach (var amount in exactSteps)
            {
                var key = RemainderKey(amount);
                if ((key & mask) == prefix)
                {
                    counts[(int)((key >> down) & ((1UL << width) - 1))]++;
                }
            }

            var digit = (1 << width) - 1;
            while (counts[digit] < k)
            {
                k -= counts[digit];
                digit--;
            }

            prefix |= (ulong)digit << down;
            mask |= ((1UL << width) - 1) << down;
            if (down == 0)
            {
                atThreshold = k;
                return prefix;
            }
        }
    }

    private static ulong RemainderKey(double amount) => BitConverter.DoubleToUInt64Bits(amount - Math.Floor(amount));
}
