// The ingredients of a liquid, as they are written.
import { declaredOf } from '../cure/additives.js';
import { formOptions, ingredientOptions } from '../forms/choices.js';
import { rowsOf } from '../forms/rows.js';
import { say } from '../words/texts.js';

export const blankRow = { ingredient: '', form: '', nitrite: '', nitrate: '', amount: '' };

/** @param {object[]} written rows, each as `blankRow`; changed in place. */
export function linesOf(written, onChange) {
  return rowsOf(written, {
    screen: 'brine', first: 'ingredient', id: 'brine-lines', title: 'brine.lines', hint: 'brine.lines.hint', add: 'formula.addLine', drop: 'formula.dropLine',
    most: 100, blank: () => ({ ...blankRow }), row: fieldsOfLine,
  }, onChange);
}

function fieldsOfLine({ ingredient }, { text, number, select }) {
  return [
    select('ingredient', { label: say('formula.ingredient'), options: ingredientOptions() }),
    select('form', { label: say('formula.form'), options: formOptions(ingredient) }),
    declaredOf(ingredient).map(({ additive, isRequired }) =>
      number(additive, { label: say(`cure.declared.${additive}`), hint: say(isRequired ? 'cure.declared.hint' : 'cure.declared.may') })),
    text('amount', { label: say('formula.amount') }),
  ];
}
