using RubLab.Core.Ingredients;
using RubLab.Core.Quantities;

namespace RubLab.Core.Brining;

/// <summary>Solves the free lines of a liquid for all their targets at once: a set of linear equations in the lines' shares.</summary>
public static class BrineSolver
{
    // Below this the equations hang on one another.
    private const double Singular = 1e-9;

    /// <summary>The shares of all lines.</summary>
    /// <param name="ingredients">The lines.</param>
    /// <param name="held">Shares of the liquid that stay whatever is solved, 0 to 1.</param>
    /// <param name="filling">Proportions in which the other given lines fill what the held and the solved ones leave; they sum to 1.</param>
    /// <param name="targets">What the free lines are solved for; each has a line of its own.</param>
    /// <param name="shares">Takes the shares, which sum to 1.</param>
    /// <param name="failed">Index of the target that could not be met.</param>
    public static BrineSolution Solve(
        IReadOnlyList<Ingredient> ingredients, ReadOnlySpan<double> held, ReadOnlySpan<double> filling,
        ReadOnlySpan<BrineTarget> targets, Span<double> shares, out int failed)
    {
        double left = 1;
        foreach (var share in held)
        {
            left -= share;
        }

        var count = targets.Length;
        var rows = new double[count, count + 1];
        for (var k = 0; k < count; k++)
        {
            double fromHeld = 0, fromFilling = 0;
            for (var i = 0; i < held.Length; i++)
            {
                var weight = Weight(ingredients, targets[k], i);
                fromHeld += weight * held[i];
                fromFilling += weight * filling[i];
            }

            for (var j = 0; j < count; j++)
            {
                rows[k, j] = Weight(ingredients, targets[k], targets[j].Line) - fromFilling;
            }

            rows[k, count] = targets[k].Share - fromHeld - (fromFilling * left);
        }

        if (!Eliminate(rows, count, out failed))
        {
            return BrineSolution.Undetermined;
        }

        var solved = 0.0;
        for (var k = 0; k < count; k++)
        {
            var share = rows[k, count];
            if (share < -Whole.LastBits * targets[k].Share)
            {
                failed = k;
                return BrineSolution.AlreadyAbove;
            }

            solved += Math.Max(0, share);
        }

        if (!(left - solved > 0))
        {
            failed = 0;
            return BrineSolution.NoRest;
        }

        for (var i = 0; i < held.Length; i++)
        {
            shares[i] = held[i] + (filling[i] * (left - solved));
        }

        for (var k = 0; k < count; k++)
        {
            shares[targets[k].Line] = Math.Max(0, rows[k, count]);
        }

        return BrineSolution.Solved;
    }

    private static double Weight(IReadOnlyList<Ingredient> ingredients, BrineTarget target, int line) => target.IsSalt
        ? ingredients[line].SaltGramsPer100Grams.Typical / 100
        : ingredients[line].Id == ingredients[target.Line].Id ? 1 : 0;

    // Gauss and Jordan with the largest pivot; the unknowns end in the last column.
    private static bool Eliminate(double[,] rows, int count, out int failed)
    {
        failed = -1;
        for (var column = 0; column < count; column++)
        {
            var pivot = column;
            for (var row = column + 1; row < count; row++)
            {
                pivot = Math.Abs(rows[row, column]) > Math.Abs(rows[pivot, column]) ? row : pivot;
            }

            if (Math.Abs(rows[pivot, column]) < Singular)
            {
                failed = column;
                return false;
            }

            for (var at = 0; at <= count; at++)
            {
                (rows[column, at], rows[pivot, at]) = (rows[pivot, at], rows[column, at]);
            }

            for (var row = 0; row < count; row++)
            {
                var factor = rows[row, column] / rows[column, column];
                for (var at = column; row != column && at <= count; at++)
                {
                    rows[row, at] -= factor * rows[column, at];
                }
            }
        }

        for (var row = 0; row < count; row++)
        {
            rows[row, count] /= rows[row, row];
        }

        return true;
    }
}
