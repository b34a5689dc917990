// The cooks a kitchen has recorded, cut by cut: each can be taken out again.
import { button, make } from '../dom.js';
import * as engine from '../engine.js';
import { locale } from '../words/numbers.js';
import { estimate, quantity } from '../words/show.js';
import { say, sayCount } from '../words/texts.js';
import { conflictOf } from './conflict.js';
import { methodInWords, yieldFigureOf, yieldLine } from './yieldfigure.js';

export class Recorded {
  #app;
  #names;
  #opened = new Set();

  constructor(app, cuts) {
    this.#app = app;
    this.#names = new Map(cuts.map(({ value, text }) => [value, text]));
    this.element = make('div', { class: 'recorded', id: 'yield-list' });
    app.yields.watch(() => this.show());
  }

  show() {
    const { yields } = this.#app;
    const name = cut => this.#names.get(cut) ?? cut;
    const sorted = yields.everything.toSorted((a, b) => name(a.cut).localeCompare(name(b.cut), locale));
    this.element.replaceChildren(...(sorted.length === 0 ? [] : [
      make('h4', null, say('own.yield.list')),
      ...sorted.filter(item => item.state === 'conflict').map(item =>
        conflictOf(item, name(item.cut), item.records, records => told(item.cut, records), choice => yields.settle(item, choice))),
      ...sorted.map(item => item.records ? this.#cut(item, name(item.cut)) : make('p', { class: 'hint' }, say('own.takenOut.of', { name: name(item.cut) }))),
    ]));
  }

  #cut(item, name) {
    const answer = computed(item.cut, item.records);
    const details = make('details', { id: `yield-of-${item.cut}`, open: this.#opened.has(item.cut) },
      make('summary', null, [name, sayCount('own.cooks', item.records.length), item.state !== 'kept' && say(`formulas.is.${item.state}`)].filter(Boolean).join(', ')),
      item.state === 'refused' ? make('p', { class: 'flag' }, [say('own.refused'), ...item.errors.map(error => error.detail)].join(' ')) : null,
      (answer?.yields ?? []).map(yieldFigureOf),
      make('ul', { class: 'library' }, item.records.map((record, i) => make('li', null,
        make('span', null, inWords(record)), make('small', null, notesOf(record)),
        button(say('form.takeOut'), () => this.#takeOut(item, [record], records => records.filter((_, at) => at !== i)), { class: 'plain', 'aria-label': say('own.yield.dropOne', { cook: inWords(record) }) })))),
      button(say('own.toBook'), () => this.#takeOut(item, item.records, () => []), { class: 'plain', 'aria-label': say('own.toBook.of', { name }) }));
    details.addEventListener('toggle', () => details.open ? this.#opened.add(item.cut) : this.#opened.delete(item.cut));
    return details;
  }

  async #takeOut({ cut }, taken, left) {
    const orNone = records => records.length > 0 ? records : null;
    await this.#app.yields.change({ cut }, records => orNone(left(records)));
    this.#app.notices.offerBack('own', sayCount('own.yield.taken', taken.length), () => this.#app.yields.change({ cut }, records => [...records, ...taken]));
    (document.querySelector(`#yield-of-${cut} summary`) ?? this.element.closest('.screen')).focus();
  }
}

// A cut of a newer edition has no figure here.
function computed(cut, records) {
  return engine.cuts().some(({ id }) => id === cut) ? engine.recordCooks(cut, records).ok : undefined;
}

function told(cut, records) {
  return [...(computed(cut, records)?.yields ?? []).map(yieldLine), ...records.map(record => `${inWords(record)}; ${notesOf(record)}`)];
}

function inWords({ before, after }) {
  return say('own.cook', { before: quantity(before), after: quantity(after) });
}

function notesOf({ date, method, beforeIs, trimLoss }) {
  const day = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeZone: 'UTC' }).format(new Date(`${date}T00:00:00Z`));
  return [day, method && methodInWords(method), beforeIs === 'green' ? '' : say(`base.${beforeIs}`), trimLoss && say('own.cook.trim', { trim: estimate(trimLoss.value, '%') })].filter(Boolean).join(', ');
}
