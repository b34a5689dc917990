namespace RubLab.Core.Remarks;

/// <summary>What a finding says, with its cause and cure; parameters stand in braces in the message.</summary>
public sealed record FindingText(string Code, Severity Severity, string Title, string Message, string Cause, string Cure, string SourceId);
