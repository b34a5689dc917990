namespace RubLab.Core.Scaling;

/// <summary>The steps scales are made with: one, two and five of every decimal place.</summary>
internal static class CommonSteps
{
    private const double LastBits = 1e-9;

    /// <summary>The coarsest of them that is fine enough.</summary>
    /// <param name="step">Above zero.</param>
    public static double NoCoarserThan(double step)
    {
        var exponent = (int)Math.Floor(Math.Log10(step * (1 + LastBits)));
        var leading = step / Math.Pow(10, exponent) * (1 + LastBits);
        var common = leading >= 5 ? 5 : leading >= 2 ? 2 : 1;
        return exponent < 0 ? common / Math.Pow(10, -exponent) : common * Math.Pow(10, exponent);
    }
}
