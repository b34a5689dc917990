namespace RubLab.Core.Tests.Diffusion;

/// <summary>A brick by plain explicit steps on a coarse grid of an eighth of it: slow, simple, and another method.</summary>
public static class CoarseBlock
{
    /// <summary>Mean over the even strength, and the middle over it; at a ratio of zero the salt lies on the faces at the start.</summary>
    public static (double Uptake, double Centre) Solve(double[] reaches, double waterRatio, double travel, int cells)
    {
        double[] size = [.. reaches.Select(r => r / cells)];
        var strengths = new double[cells, cells, cells];
        double liquid = 1, volume = size[0] * size[1] * size[2], whole = reaches[0] * reaches[1] * reaches[2];
        if (waterRatio == 0)
        {
            Coat(strengths, reaches, cells);
        }

        var stable = 0.9 / (2 * size.Sum(h => 1 / (h * h)) * 1.5);
        var steps = (int)Math.Ceiling(travel / stable);
        var step = travel / steps;
        for (var t = 0; t < steps; t++)
        {
            var flow = new double[cells, cells, cells];
            double entered = 0;
            for (var axis = 0; axis < 3; axis++)
            {
                var rate = step / (size[axis] * size[axis]);
                for (var i = 0; i < cells; i++)
                {
                    for (var j = 0; j < cells; j++)
                    {
                        for (var k = 0; k < cells; k++)
                        {
                            var along = axis == 0 ? i : axis == 1 ? j : k;
                            double passed;
                            if (along == cells - 1)
                            {
                                if (waterRatio == 0)
                                {
                                    continue;
                                }

                                passed = 2 * rate * (liquid - strengths[i, j, k]);
                                entered += passed;
                                flow[i, j, k] += passed;
                                continue;
                            }

                            var (a, b, c) = (i + (axis == 0 ? 1 : 0), j + (axis == 1 ? 1 : 0), k + (axis == 2 ? 1 : 0));
                            passed = rate * (strengths[a, b, c] - strengths[i, j, k]);
                            flow[i, j, k] += passed;
                            flow[a, b, c] -= passed;
                        }
                    }
                }
            }

            double sum = 0;
            for (var i = 0; i < cells; i++)
            {
                for (var j = 0; j < cells; j++)
                {
                    for (var k = 0; k < cells; k++)
                    {
                        strengths[i, j, k] += flow[i, j, k];
                        sum += strengths[i, j, k];
                    }
                }
            }

            liquid -= waterRatio == 0 ? 0 : entered * volume / (whole * waterRatio);
        }

        double mean = 0;
        foreach (var strength in strengths)
        {
            mean += strength * volume / whole;
        }

        var even = waterRatio == 0 ? 1 : waterRatio / (1 + waterRatio);
        return (mean / even, strengths[0, 0, 0] / even);
    }

    // As many grams per area on each face, one on average over the volume.
    private static void Coat(double[,,] strengths, double[] reaches, int cells)
    {
        var area = reaches.Sum(r => 1 / r);
        for (var i = 0; i < cells; i++)
        {
            for (var j = 0; j < cells; j++)
            {
                for (var k = 0; k < cells; k++)
                {
                    int[] at = [i, j, k];
                    strengths[i, j, k] = at.Select((place, axis) => place == cells - 1 ? cells / reaches[axis] / area : 0).Sum();
                }
            }
        }
    }
}
