// Rows of fields that are added and taken out again.
import { button, byId, make } from '../dom.js';
import { say } from '../words/texts.js';
import { fieldsOf } from './workbench.js';

/**
 * @param {object[]} rows as written; changed in place.
 * @param {object} how `screen`, whose ids they have; `first`, the member whose field comes first; `id` of what adds a row, for faults of them all;
 * `title`, `hint`, `add` and `drop`, their texts; `kind`, a class; `most`; `blank(rows)`, a new row; `row(row, fields, i)`, the fields of one.
 * @param {() => void} onChange
 */
export function rowsOf(rows, { screen, first, id, title, hint, add, drop, kind, most, blank, row }, onChange) {
  const element = make('section', { class: 'card', 'aria-label': say(title) });
  build();
  return { element, build, show, write, choose };

  function build() {
    element.replaceChildren(
      make('h3', null, say(title)),
      hint ? make('p', { class: 'hint' }, say(hint)) : '',
      make('div', { class: 'fault', id: `${id}-fault` }),
      make('ol', { class: kind ? `lines ${kind}` : 'lines' }, rows.map((written, i) => make('li', null,
        row(written, fieldsOf(screen, written, i), i),
        rows.length > 1 ? button(say('form.takeOut'), () => takeOut(i), { class: 'plain', 'aria-label': say(drop, { number: i + 1 }) }) : null))),
      rows.length < most ? button(say(add), addOne, { class: 'plain', id }) : make('span', { id }));
  }

  /** Builds them anew with one of the fields at hand. */
  function show(member, i) {
    build();
    byId(`${screen}-${member}-${i}`).focus();
  }

  /** Writes in a row in the cook's stead. */
  function write(member, i, value) {
    rows[i][member] = value;
    build();
    onChange();
    byId(`${screen}-${member}-${i}`).focus();
  }

  /** Writes what was chosen beside a field; see showFaults. */
  function choose({ field }, choice) {
    const [, member, i] = field.split('-');
    write(member, i, choice);
  }

  function addOne() {
    rows.push(blank(rows));
    build();
    onChange();
    byId(`${screen}-${first}-${rows.length - 1}`).focus();
  }

  function takeOut(i) {
    rows.splice(i, 1);
    build();
    onChange();
    byId(`${screen}-${first}-${Math.min(i, rows.length - 1)}`).focus();
  }
}
