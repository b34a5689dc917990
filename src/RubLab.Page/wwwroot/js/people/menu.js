// The cuts of a menu, as they are written.
import { byId, fillSelect, make } from '../dom.js';
import * as engine from '../engine.js';
import { orNone } from '../forms/choices.js';
import { rowsOf } from '../forms/rows.js';
import { methodInWords } from '../own/yieldfigure.js';
import { say } from '../words/texts.js';

export const blankRow = { cut: '', share: '', price: '', per: 'weight', first: '', then: '', piece: '', trim: '', method: '' };

/**
 * @param {object[]} rows as written; changed in place.
 * @param {{cuts: object[], formulas: () => object[], unit: () => string, recorded: (cut: string) => object[]}} offers
 */
export function menuOf(rows, { cuts, formulas, unit, recorded }, onChange) {
  const { element, build } = rowsOf(rows, {
    screen: 'people', first: 'cut', id: 'people-add', kind: 'menu', title: 'people.menu', add: 'people.addCut', drop: 'people.dropCut',
    most: 100, blank: () => likeLast(rows.at(-1)), row: fieldsOfCut,
  }, onChange);
  return { element, build, offerMethods };

  function fieldsOfCut(row, { number, select }) {
    const options = orNone(formulas(), 'people.nothing');
    return [
      select('cut', { label: say('form.cut'), options: orNone(cuts, 'form.cut.choose') }),
      number('share'),
      select('first', { options }),
      select('then', { options }),
      number('price'),
      select('per', { options: [{ value: 'weight', text: unit() }, { value: 'piece', text: say('people.per.piece') }] }),
      make('details', { open: Boolean(row.piece || row.trim || row.method) },
        make('summary', null, say('people.known')),
        make('div', { class: 'pair' },
          number('piece', { label: say('people.piece', { unit: unit() }) }),
          number('trim'),
          select('method', { label: say('own.yield.method'), options: methods(row) }))),
    ];
  }

  function likeLast({ per, first, then }) {
    return { ...blankRow, per, first, then };
  }

  /** The ways of cooking a yield is known of, the book's and the kitchen's own. */
  function offerMethods(i) {
    fillSelect(byId(`people-method-${i}`), methods(rows[i]), rows[i].method);
    rows[i].method = byId(`people-method-${i}`).value;
  }

  function methods({ cut }) {
    const known = cut ? [...engine.cut(cut).cookYields, ...recorded(cut)].map(({ method }) => method).filter(Boolean) : [];
    return orNone([...new Set(known)].map(value => ({ value, text: methodInWords(value) })), 'people.method.any');
  }
}
