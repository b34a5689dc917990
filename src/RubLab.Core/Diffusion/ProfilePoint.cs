using RubLab.Core.Quantities;

namespace RubLab.Core.Diffusion;

/// <summary>How salty one place of the piece is.</summary>
/// <param name="Position">0 in the middle, or at the closed face, to 1 at the treated face.</param>
/// <param name="RelativeToMean">There, on the line halfway up the other dimensions, over the mean of the piece.</param>
/// <param name="LayerRelativeToMean">The mean of the layer parallel to the face (the ring of a cylinder) over that of the piece. Over all
/// layers it averages 1: no salt is lost. It differs from the other in a brick alone.</param>
public sealed record ProfilePoint(double Position, Band RelativeToMean, Band LayerRelativeToMean);
