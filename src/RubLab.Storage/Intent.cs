namespace RubLab.Storage;

/// <summary>What a unit of work is for, told at its start: a reader never waits for a writer, and writers take turns.</summary>
public enum Intent
{
    Read,
    Write,
}
