// What a cook writes of a formula, without what was computed from it. A member left out here is lost at the next saving.

/** The members of a formula that a cook writes. */
export function authoredOf(formula) {
  const lines = formula.lines.map(({ ingredient, form, amount, salt, nitriteFraction, nitrateFraction }) =>
    ({ ingredient, form, amount, salt, nitriteFraction, nitrateFraction }));
  const { name, kind, dose, writtenFor, reducedTo } = formula;
  const base = formula.base === 'green' ? undefined : formula.base;
  return JSON.parse(JSON.stringify({ name, kind, base, dose, writtenFor, writtenForIs: writtenFor && formula.writtenForIs, reducedTo, lines }));
}
