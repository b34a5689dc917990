namespace RubLab.Api.Http;

/// <summary>What an If-Match header says.</summary>
public enum IfMatch
{
    Absent,
    Any,
    Revision,
    /// <summary>Not a tag this server gives.</summary>
    Unknown,
}
