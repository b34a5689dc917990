using RubLab.Core.Meat;

namespace RubLab.Core.Remarks;

/// <summary>A parameter of a finding that its message says in other words than a program is given.</summary>
/// <param name="Value">What stands in the parameters: string, double or string[].</param>
/// <param name="Words">What stands in the message.</param>
public readonly record struct Said(object Value, string Words)
{
    /// <summary>A line of a pile or a menu: its id for a program, the name of its cut for a reader.</summary>
    /// <remarks>The sender's own id follows the name, without the cut's where it begins with that: <c>pork-shoulder-2</c> is "Pork shoulder (2)".</remarks>
    public static Said Line(string id, Cut cut)
    {
        var prefix = $"{cut.Id}-";
        return new Said(
            id, id == cut.Id ? cut.Name : $"{cut.Name} ({(id.StartsWith(prefix, StringComparison.Ordinal) ? id[prefix.Length..] : id)})");
    }
}
