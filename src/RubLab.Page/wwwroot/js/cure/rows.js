// What goes into a cure, as it is written: each with an amount of its own, or with what the meat is to have of it.
import { make } from '../dom.js';
import { allIngredients } from '../engine.js';
import { orNone, worded } from '../forms/choices.js';
import { rowsOf } from '../forms/rows.js';
import { say } from '../words/texts.js';
import { additivesOf, declaredOf, isCure, nameOf } from './additives.js';

export const blankRow = { ingredient: '', nitrite: '', nitrate: '', how: 'amount', amount: '' };

/** @param {object[]} written rows, each as `blankRow`; changed in place. */
export function linesOf(written, isLiquid, onChange) {
  return rowsOf(written, {
    screen: 'cure', first: 'ingredient', id: 'cure-lines', kind: 'cures', title: 'cure.lines', hint: isLiquid ? 'cure.lines.liquid' : 'cure.lines.hint',
    add: 'formula.addLine', drop: 'formula.dropLine', most: 30, blank: () => ({ ...blankRow }), row: (row, fields) => fieldsOfLine(row, fields, isLiquid),
  }, onChange);
}

function fieldsOfLine(row, { text, select }, isLiquid) {
  const mayBeTarget = canBeTarget(row, isLiquid);
  const isTarget = row.how === 'target' && mayBeTarget;
  const [counted] = additivesOf(row.ingredient);
  return [
    byGroup(select('ingredient', { label: say('formula.ingredient'), options: orNone([], 'formula.ingredient.choose') }), row.ingredient),
    mayBeTarget ? select('how', { options: worded(['amount', 'target'], 'cure.how') }) : null,
    declaredOf(row.ingredient).map(({ additive, isRequired }) =>
      text(additive, { label: say(`cure.declared.${additive}`), hint: say(isRequired ? 'cure.declared.hint' : 'cure.declared.may') })),
    text('amount', {
      label: isTarget ? say('cure.target', { what: counted ? nameOf(counted) : say('cure.target.itself') }) : say('formula.amount'),
      hint: say(hintOf(row, isTarget, isLiquid)),
    }),
  ];
}

/** Whether a row may say what the meat is to have of it. What a pickle leaves of anything without a level is a matter of brines. */
export function canBeTarget({ ingredient }, isLiquid) {
  return ingredient !== '' && (additivesOf(ingredient).length > 0 || (!isLiquid && ingredient !== 'water'));
}

function hintOf({ ingredient }, isTarget, isLiquid) {
  if (isTarget) {
    return isCure(ingredient) || additivesOf(ingredient).length > 0 ? 'cure.target.hint' : 'cure.target.salt';
  }
  return isLiquid ? 'cure.amount.liquid' : 'cure.amount.hint';
}

// A cure stands apart from everything else in the list too.
function byGroup(entry, chosen) {
  const list = entry.querySelector('select');
  for (const name of ['cure', 'additive', 'other']) {
    list.append(make('optgroup', { label: say(`cure.group.${name}`) },
      allIngredients().filter(known => groupOf(known) === name).map(({ id, name: text }) => make('option', { value: id }, text))));
  }
  list.value = chosen;
  return entry;
}

function groupOf({ id, group }) {
  if (group !== 'cure' && group !== 'additive') {
    return 'other';
  }
  return isCure(id) ? 'cure' : additivesOf(id).length > 0 ? 'additive' : 'other';
}
