using RubLab.Core.Quantities;

namespace RubLab.Core.Ingredients;

/// <summary>An amount of an ingredient in another unit, through its bulk density where a mass meets a volume.</summary>
/// <param name="Amount">In the unit asked for.</param>
/// <param name="Choice">The density used; none where both units measure the same thing.</param>
public sealed record Conversion(Band Amount, DensityChoice? Choice)
{
    /// <summary>Converts between units of mass and volume; none where the form has no density.</summary>
    /// <exception cref="ArgumentException">A unit measures neither mass nor volume.</exception>
    public static Conversion? Of(Ingredient ingredient, IngredientForm? named, double value, Unit from, Unit to, double asksAbovePercent) =>
        Of(value, from, to, () => DensityChoice.For(ingredient, named, asksAbovePercent));

    /// <summary>Converts with a density chosen by the caller, asked for only where a mass meets a volume.</summary>
    /// <exception cref="ArgumentException">A unit measures neither mass nor volume.</exception>
    public static Conversion? Of(double value, Unit from, Unit to, Func<DensityChoice> choose)
    {
        if (from.Dimension is not (Dimension.Mass or Dimension.Volume) || to.Dimension is not (Dimension.Mass or Dimension.Volume))
        {
            throw new ArgumentException("Only masses and volumes convert.", nameof(to));
        }

        var inBase = from.ToBase(value);
        if (from.Dimension == to.Dimension)
        {
            return new Conversion(Band.Exact(to.FromBase(inBase)), null);
        }

        var choice = choose();
        if (choice.Density is not { } density)
        {
            return null;
        }

        var converted = from.Dimension == Dimension.Volume
            ? density.GramsPerMillilitre.Times(inBase)
            : Band.Exact(inBase).Over(density.GramsPerMillilitre);
        return new Conversion(converted.Over(to.Factor), choice);
    }
}
