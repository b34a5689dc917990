using RubLab.Contracts.Quantities;
using RubLab.Core.Quantities;

namespace RubLab.Contracts.Outputs;

/// <summary>A column of masses, all in the unit its heading names.</summary>
/// <param name="name">What the masses are.</param>
/// <param name="unit">Symbol of a mass unit.</param>
internal sealed class MassColumn(string name, string unit)
{
    public string Heading => $"{name}_{unit}";

    /// <summary>The number for this column; one in another unit is put into the column's.</summary>
    public double Of(Quantity mass) => mass.Unit == unit
        ? mass.Value
        : Rounded.Exact(UnitTable.Get(unit).FromBase(UnitTable.Get(mass.Unit).ToBase(mass.Value)));
}
