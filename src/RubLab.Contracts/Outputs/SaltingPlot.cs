namespace RubLab.Contracts.Outputs;

/// <summary>A plot of an answer on salting.</summary>
public enum SaltingPlot
{
    /// <summary>Salt against depth at the end of the stages.</summary>
    Profile,
    /// <summary>What is taken up, and how far the middle has come, against time.</summary>
    Uptake,
}
