using RubLab.Contracts.Quantities;

namespace RubLab.Contracts.Scaling;

/// <summary>How a treatment lies on the pieces of one line, for one application.</summary>
/// <param name="Line">The pile line.</param>
/// <param name="Coverage">Least, typical and most over the pieces, g/100cm2.</param>
/// <param name="Layer">The loose layer, mm; absent where the mix has no density.</param>
/// <param name="Grain">The mix's typical grain, mm; absent where no form has a size.</param>
/// <param name="SourceId">Where the shape comes from that the surface is reckoned with.</param>
public sealed record CoverageResponse(string Line, QuantityBand Coverage, Quantity? Layer, Quantity? Grain, string SourceId);
