// Two versions of a number this kitchen measured, side by side, until the cook says.
import { button, headOf, make } from '../dom.js';
import { moment } from '../words/numbers.js';
import { say } from '../words/texts.js';

/**
 * @param {object} item in conflict, as OwnNumbers has it.
 * @param {string} name what it is of.
 * @param {object[] | null} mine what was measured here; null where it was taken out.
 * @param {(measured: object[]) => (string | Element)[]} told a version in words, one a row.
 * @param {(choice: string) => void} settle
 */
export function conflictOf(item, name, mine, told, settle) {
  const choose = (choice, text) => button(say(text), () => settle(choice), { class: choice === 'both' ? 'main' : 'plain' });
  const when = item.theirsAt && moment(item.theirsAt);
  const cell = measured => make('td', null, measured
    ? make('ul', { class: 'versions' }, told(measured).map(row => make('li', null, row)))
    : say('own.takenOut'));
  return make('section', { class: 'conflict', 'aria-label': say('conflict.of', { name }) },
    make('h4', null, say('conflict.of', { name })),
    make('p', null, say(!item.theirs ? 'conflict.gone' : mine ? 'conflict.how.server' : 'own.conflict.goneHere')),
    make('table', { class: 'compare' },
      headOf([say('conflict.title.mine'), when ? say('own.conflict.server', { when }) : say('own.conflict.onServer')]),
      make('tbody', null, make('tr', null, cell(mine), cell(item.theirs)))),
    make('div', { class: 'doings' },
      mine && item.theirs ? choose('both', 'own.conflict.both') : null,
      choose('mine', mine ? 'conflict.mine' : 'own.conflict.takeOut'),
      choose('theirs', item.theirs ? 'conflict.theirs' : 'own.conflict.takeOut')));
}
