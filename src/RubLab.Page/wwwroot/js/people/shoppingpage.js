// The shopping list on paper.
import { headOf, make } from '../dom.js';
import { weightIn } from '../words/bought.js';
import { locale } from '../words/numbers.js';
import { names } from '../words/show.js';
import { say, sayCount } from '../words/texts.js';
import { money } from './money.js';
import { neededInWords, toBuyInWords } from './shelf.js';

/** Fills the page with a list. */
export function listPage(page, { ingredients, meat, outlay }, { unit, cutName, paper }) {
  page.className = `page shopping-page ${paper}`;
  page.replaceChildren(
    make('header', null,
      make('h3', null, say('people.shopping')),
      make('p', null, new Intl.DateTimeFormat(locale, { dateStyle: 'long' }).format(new Date()))),
    make('table', null,
      headOf(['paper.tick', 'people.shopping.what', 'people.shopping.buy', 'people.shopping.needed'].map(key => say(key))),
      make('tbody', null,
        meat.map(line => rowOf(cutName(line.cut), '', [
          line.pieces === undefined ? '' : sayCount('people.pieces', line.pieces), weightIn(line.purchaseWeight, unit), line.outlay ? money(line.outlay) : '',
        ].filter(Boolean).join(', '), '')),
        ingredients.map(item => {
          const { name, form } = names(item);
          return rowOf(name, form, toBuyInWords(item), neededInWords(item));
        }))),
    outlay ? make('p', null, make('strong', null, say('people.outlay', { total: money(outlay) }))) : '');
}

function rowOf(name, form, buy, needed) {
  return make('tr', null,
    make('td', { class: 'box' }),
    make('th', { scope: 'row' }, name, form ? make('small', null, form) : null),
    make('td', null, make('strong', null, buy)),
    make('td', null, needed));
}
