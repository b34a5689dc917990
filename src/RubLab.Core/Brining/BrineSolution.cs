namespace RubLab.Core.Brining;

/// <summary>How solving a liquid for its targets ended.</summary>
public enum BrineSolution
{
    /// <summary>Every target is met.</summary>
    Solved,
    /// <summary>The other lines bring more than a target already.</summary>
    AlreadyAbove,
    /// <summary>Two targets hang on one another so that no amounts, or any, meet both.</summary>
    Undetermined,
    /// <summary>The solved lines leave no liquid.</summary>
    NoRest,
}
