namespace RubLab.Core.Quantities;

/// <summary>
/// Shares and weighted means of parts whose amounts are bands. Each amount stands above and below the line, so
/// the extremes are found by putting every amount at one of its ends, never by dividing band by band.
/// </summary>
public static class Blends
{
    /// <summary>The share of one part in the whole, 0 to 1.</summary>
    /// <param name="amounts">All parts in one unit of mass; the sum of the typical values is above zero.</param>
    /// <param name="part">Index of the part asked for.</param>
    public static Band Share(ReadOnlySpan<Band> amounts, int part)
    {
        double low = 0, typical = 0, high = 0;
        for (var i = 0; i < amounts.Length; i++)
        {
            if (i != part)
            {
                low += amounts[i].Low;
                typical += amounts[i].Typical;
                high += amounts[i].High;
            }
        }

        // Where a part is nearly all there is, a quotient's last bit may fall out of order.
        var own = amounts[part];
        var share = Quotient(own.Typical, typical);
        return new Band(Math.Min(Quotient(own.Low, high), share), share, Math.Max(Quotient(own.High, low), share));

        static double Quotient(double mine, double others) => mine == 0 ? 0 : mine / (mine + others);
    }

    /// <summary>The mean of a property over the parts, weighted by their amounts.</summary>
    /// <param name="amounts">The parts in one unit of mass; the sum of the typical values is above zero.</param>
    /// <param name="properties">The property of each part, per unit of its mass.</param>
    /// <exception cref="ArgumentException">Not one property per amount, or no amount above zero.</exception>
    public static Band WeightedMean(ReadOnlySpan<Band> amounts, ReadOnlySpan<Band> properties)
    {
        if (amounts.Length != properties.Length || amounts.IsEmpty)
        {
            throw new ArgumentException("One property per amount.", nameof(properties));
        }

        double sum = 0, weighted = 0;
        for (var i = 0; i < amounts.Length; i++)
        {
            sum += amounts[i].Typical;
            weighted += amounts[i].Typical * properties[i].Typical;
        }

        if (!(sum > 0))
        {
            throw new ArgumentException("There is nothing to take the mean over.", nameof(amounts));
        }

        var typical = weighted / sum;
        return new Band(
            Math.Min(typical, Extreme(amounts, properties, typical, lowest: true)),
            typical,
            Math.Max(typical, Extreme(amounts, properties, typical, lowest: false)));
    }

    // A weighted mean is extreme where every part richer than the mean stands at one end and every poorer part
    // at the other. Starting from the typical mean and re-choosing ends only ever moves outward, and there are
    // finitely many corners, so this ends (Dinkelbach's method for a linear fractional function).
    private static double Extreme(ReadOnlySpan<Band> amounts, ReadOnlySpan<Band> properties, double start, bool lowest)
    {
        var mean = start;
        while (true)
        {
            double sum = 0, weighted = 0;
            for (var i = 0; i < amounts.Length; i++)
            {
                var property = lowest ? properties[i].Low : properties[i].High;
                var amount = property > mean == lowest ? amounts[i].Low : amounts[i].High;
                sum += amount;
                weighted += amount * property;
            }

            var next = sum > 0 ? weighted / sum : mean;
            if (lowest ? next >= mean : next <= mean)
            {
                return mean;
            }

            mean = next;
        }
    }
}
