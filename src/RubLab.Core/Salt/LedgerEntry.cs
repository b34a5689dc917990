using RubLab.Core.Formulas;
using RubLab.Core.Quantities;

namespace RubLab.Core.Salt;

/// <summary>Where some of the salt and sodium came from.</summary>
/// <param name="Treatment">Index of the treatment in the stack.</param>
/// <param name="Line">The formula line.</param>
/// <param name="SaltGramsPerKilogramGreen">Sodium chloride that stays on or in the meat.</param>
/// <param name="SodiumGramsPerKilogramGreen">Sodium that stays, whatever it is bound to.</param>
public sealed record LedgerEntry(
    int Treatment, FormulaLine Line, Band SaltGramsPerKilogramGreen, Band SodiumGramsPerKilogramGreen);
