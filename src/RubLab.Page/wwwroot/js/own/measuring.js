// How a kitchen measures, what it prints on and what it pays in.
import { field, make, selectOf } from '../dom.js';
import { currencies } from '../engine.js';
import { orNone, plain, worded } from '../forms/choices.js';
import { locale } from '../words/numbers.js';
import { say } from '../words/texts.js';

const units = ['lb', 'oz', 'kg', 'g'];

export function measuringOf({ settings }) {
  const element = make('section', { class: 'card', 'aria-label': say('own.measuring') },
    make('h3', null, say('own.measuring')),
    field('own-measures', say('own.measures'), selectOf('measures', worded(['us', 'metric', 'au'], 'own.measures'), settings.measures), { hint: say('own.measures.hint') }),
    field('own-bareUnit', say('form.bareUnit'), selectOf('bareUnit', plain(units), settings.bareUnit), { hint: say('own.bareUnit.hint') }),
    field('own-currency', say('own.currency'), selectOf('currency', orNone(currencies().map(inWords), 'own.currency.none'), settings.currency)),
    field('own-paper', say('own.paper'), selectOf('paper', worded(['a4', 'letter'], 'own.paper'), settings.paper)));
  element.addEventListener('change', event => settings.set(event.target.name, event.target.value));
  return element;
}

function inWords(code) {
  const name = new Intl.DisplayNames(locale, { type: 'currency', fallback: 'none' }).of(code);
  return { value: code, text: name ? `${code}, ${name}` : code };
}
