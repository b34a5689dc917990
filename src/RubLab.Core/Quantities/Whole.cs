namespace RubLab.Core.Quantities;

/// <summary>Whole numbers of steps, bowls, packs and servings. What is whole but for the last bits of its factors is whole.</summary>
public static class Whole
{
    /// <summary>The relative difference that multiplying and dividing leave between what is equal by hand.</summary>
    public const double LastBits = 1e-12;

    /// <summary>The least whole number that is enough.</summary>
    public static long Up(double exact) => (long)Math.Ceiling(exact * (1 - LastBits));

    /// <summary>The most that is whole.</summary>
    public static long Down(double exact) => (long)Math.Floor(exact * (1 + LastBits));
}
