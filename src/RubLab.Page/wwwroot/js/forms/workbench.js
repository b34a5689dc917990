// A screen that computes: a form kept as it is written, and beside it what follows from it.
import { field, make, numberInput, selectOf, textArea, textInput } from '../dom.js';
import { saveWritten } from '../kept/written.js';
import { say } from '../words/texts.js';
import { worded } from './choices.js';

/** A form that is never sent; `take` is called with the control that was written in. */
export function formOf(label, take, ...children) {
  const form = make('form', { class: 'card', novalidate: true, 'aria-label': label }, ...children);
  form.addEventListener('submit', event => event.preventDefault());
  form.addEventListener('input', ({ target }) => take(target));
  return form;
}

/** A form and the place for what follows, `{screen}-outcome`; it is said as well, in `{screen}-said`. */
export function workbenchOf(screen, form) {
  return make('div', { class: 'workbench' }, form, make('div', { class: 'outcome' },
    make('p', { id: `${screen}-said`, class: 'unseen', role: 'status' }),
    make('div', { class: 'outcome', id: `${screen}-outcome` })));
}

/**
 * Makes fields of what is written, each by its member. Label and hint are the texts `{screen}.{member}` and `{screen}.{member}.hint`
 * where no other are given.
 * @param {object} written the whole form, or one of its rows.
 * @param {number} [i] which of the rows.
 */
export function fieldsOf(screen, written, i) {
  const [ofId, ofName] = i === undefined ? ['', ''] : [`-${i}`, `/${i}`];
  const as = control => (member, { label = say(`${screen}.${member}`), hint = hintOf(`${screen}.${member}`), ...more } = {}) =>
    field(`${screen}-${member}${ofId}`, label, control(`${member}${ofName}`, written[member], more), { hint });
  const number = as(numberInput);
  const select = as((name, value, { options }) => selectOf(name, options, value));
  return {
    number, select,
    text: as(textInput),
    weights: as(textArea),
    choice: (member, values) => select(member, { options: worded(values, `${screen}.${member}`) }),
    pair: (...members) => make('div', { class: 'pair' }, members.map(member => number(member))),
  };
}

function hintOf(key) {
  const hint = say(`${key}.hint`);
  return hint === `${key}.hint` ? '' : hint;
}

/** A hint that ends with the unit of a number alone, which Own numbers and the bench can change. */
export function bareHint(hint) {
  return [hint, ' ', make('span', { 'data-bare-unit': '' })];
}

/** Writes that unit into the hints of a screen. */
export function showBareUnit(root, { bareUnit }) {
  for (const place of root.querySelectorAll('[data-bare-unit]')) {
    place.textContent = say('form.bare', { unit: bareUnit });
  }
}

/** Takes what was written in a control into its member, or into that of its row in `list`; gives both names. */
export function take({ name, value }, written, list) {
  const [member, i] = name.split('/');
  (i === undefined ? written : written[list][i])[member] = value;
  return { member, i };
}

/** Keeps what is written on this device, and says where it does not. */
export function keep(app, screen, written) {
  app.notices.show(screen, saveWritten(screen, written) ? '' : say('app.not-kept'));
}
