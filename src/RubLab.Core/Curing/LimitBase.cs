namespace RubLab.Core.Curing;

/// <summary>What a limit's parts per million are of.</summary>
public enum LimitBase
{
    /// <summary>All that is put on or in, whatever stays, per green weight.</summary>
    GreenIngoing,
    /// <summary>What stays before cooking, per green weight.</summary>
    GreenRetained,
    /// <summary>What is left, per weight of the finished product.</summary>
    Finished,
    /// <summary>Per weight of meat and all ingredients together.</summary>
    Ingredients,
}
