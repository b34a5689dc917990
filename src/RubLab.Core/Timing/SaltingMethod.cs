namespace RubLab.Core.Timing;

/// <summary>How the salt comes to the meat.</summary>
public enum SaltingMethod
{
    /// <summary>A weighed amount on the faces at the start, evenly by area, all of it counted as in the meat's outermost layer; none follows.</summary>
    DryBrine,
    /// <summary>A stirred liquid that weakens as the meat takes salt up.</summary>
    Soak,
    /// <summary>Salt or strong liquid in such excess that the faces keep one strength.</summary>
    SaltBed,
}
