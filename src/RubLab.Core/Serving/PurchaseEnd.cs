namespace RubLab.Core.Serving;

/// <summary>Which end of the bands a purchase is made for.</summary>
public enum PurchaseEnd
{
    /// <summary>Typical trim, bone and yield: over several pieces the odd ones even out.</summary>
    Typical,

    /// <summary>Most trim, most bone, least yield.</summary>
    Safe,
}
