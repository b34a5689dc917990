using RubLab.Core.Sources;

namespace RubLab.Core.Ingredients;

/// <summary>
/// A grind given as a size instead of a name. The form whose sizes hold it is meant; between two forms the density goes
/// from that of the finer at its coarsest grain to that of the coarser at its finest, in the logarithm of the size;
/// outside everything measured nothing is guessed.
/// </summary>
public static class GrindSize
{
    /// <summary>The form and density for a size; none when no sized form holds or brackets it.</summary>
    public static DensityChoice? Choose(Ingredient ingredient, double micrometres)
    {
        IngredientForm? below = null;
        IngredientForm? above = null;
        IngredientForm? holding = null;
        foreach (var form in ingredient.Forms)
        {
            if (form is not { Density: not null, SizeLowMicrometres: { } low, SizeHighMicrometres: { } high })
            {
                continue;
            }

            if (low <= micrometres && micrometres <= high)
            {
                holding = Narrower(holding, form);
            }
            else if (high < micrometres)
            {
                below = below is null || high > below.SizeHighMicrometres ? form : high == below.SizeHighMicrometres ? Narrower(below, form) : below;
            }
            else
            {
                above = above is null || low < above.SizeLowMicrometres ? form : low == above.SizeLowMicrometres ? Narrower(above, form) : above;
            }
        }

        if (holding is not null)
        {
            return new DensityChoice(holding, holding.Density, SpansForms: false);
        }

        return below is not null && above is not null ? Between(below, above, micrometres) : null;
    }

    /// <summary>The smallest and largest size any form of the ingredient is known for; none where none is.</summary>
    public static (double Low, double High)? Span(Ingredient ingredient)
    {
        var sized = ingredient.Forms
            .Where(f => f is { Density: not null, SizeLowMicrometres: not null, SizeHighMicrometres: not null })
            .ToList();
        return sized.Count == 0 ? null : (sized.Min(f => f.SizeLowMicrometres!.Value), sized.Max(f => f.SizeHighMicrometres!.Value));
    }

    // Where two forms hold a size, or end at one, the one with the narrower span says more about it; of equal ones the first listed.
    private static IngredientForm Narrower(IngredientForm? first, IngredientForm second) =>
        first is null || second.SizeHighMicrometres / second.SizeLowMicrometres < first.SizeHighMicrometres / first.SizeLowMicrometres
            ? second
            : first;

    // From edge to edge, so that the density does not jump where a form's sizes end. Each end of the band goes the same way.
    private static DensityChoice Between(IngredientForm below, IngredientForm above, double micrometres)
    {
        var from = below.SizeHighMicrometres!.Value;
        var to = above.SizeLowMicrometres!.Value;
        var share = Math.Clamp(Math.Log(micrometres / from) / Math.Log(to / from), 0, 1);
        var finer = below.Density!.GramsPerMillilitre;
        var coarser = above.Density!.GramsPerMillilitre;
        var band = finer.Times(1 - share).Plus(coarser.Times(share));
        var worse = (Confidence)Math.Max((int)below.Density.Citation.Confidence, (int)above.Density.Citation.Confidence);
        var nearer = share < 0.5 ? below : above;
        return new DensityChoice(
            nearer,
            new BulkDensity(band, nearer.Density!.Citation with { Confidence = worse }, "grind"),
            SpansForms: false);
    }
}
