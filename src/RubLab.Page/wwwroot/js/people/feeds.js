// How many a pile feeds: back from meat to portions.
import { showFaults } from '../bench/faults.js';
import { findingsOf } from '../bench/remarks.js';
import { byId, make } from '../dom.js';
import * as engine from '../engine.js';
import { orNone, worded } from '../forms/choices.js';
import { Reading, withoutBlanks } from '../forms/reading.js';
import { bareHint, fieldsOf, formOf, keep, showBareUnit } from '../forms/workbench.js';
import { loadWritten } from '../kept/written.js';
import { boughtIn, portionIn, weightIn, weightsIn } from '../words/bought.js';
import { showFixed, showNumber } from '../words/numbers.js';
import { say } from '../words/texts.js';
import { countBand, drawn } from './drawn.js';
import { costInWords, money } from './money.js';
import { appetites } from './request.js';

const blank = { of: 'cut', cut: '', weights: '', weightIs: 'purchase', appetite: 'ordinary', portion: '', paid: '' };
const fields = { cut: 'cut', weightIs: 'weightIs', portion: 'portion', appetite: 'portion', paid: 'paid', cookYield: 'cut', method: 'cut' };

export class Feeds {
  #app;
  #currency;
  #written = loadWritten('feeds', blank);
  #cuts;

  /** @param {() => string} currency of the prices on this screen. */
  constructor(app, cuts, currency) {
    this.#app = app;
    this.#cuts = cuts;
    this.#currency = currency;
    const written = this.#written;
    const { number, select, weights, choice } = fieldsOf('feeds', written);
    this.element = formOf(say('feeds.title'), ({ name, value }) => {
      written[name] = value;
      keep(app, 'feeds', written);
      this.update();
    },
    make('h3', null, say('feeds.title')),
    choice('of', ['cut', 'bench']),
    select('cut', { label: say('form.cut'), options: orNone(cuts, 'form.cut.choose') }),
    weights('weights', { label: say('form.pile'), hint: bareHint(say('brine.meat.hint', { each: showFixed(3.6, 1) })) }),
    select('weightIs', { options: worded(['purchase', 'green'], 'own.yield.beforeIs') }),
    make('div', { class: 'pair' }, select('appetite', { options: worded(appetites, 'people') }), number('portion')),
    number('paid'),
    make('div', { class: 'outcome', id: 'feeds-outcome' }));
    this.element.id = 'feeds';
  }

  async update() {
    const isBench = this.#written.of === 'bench';
    for (const name of ['cut', 'weights', 'weightIs']) {
      byId(`feeds-${name}`).closest('.field').hidden = isBench;
    }
    const { request, faults, isEmpty } = await this.#read(isBench);
    const { ok, errors = [] } = request ? engine.countPortions(request) : {};
    const all = faults.concat(errors.map(({ pointer, detail }) => ({ field: fieldOf(pointer, isBench), detail })));
    showFaults(this.element, all);
    byId('feeds-outcome').replaceChildren(...(ok ? this.#outcome(ok) : [make('p', null, say(all.length > 0 ? 'feeds.mend' : isBench && isEmpty ? 'feeds.noPile' : 'feeds.empty'))]));
  }

  async #read(isBench) {
    showBareUnit(this.element, this.#app.settings);
    const { cut, weights, weightIs, appetite, portion, paid } = this.#written;
    const reading = new Reading(this.#app.settings);
    const currency = this.#currency();
    const amount = reading.money('feeds-paid', paid, currency);
    if (amount !== undefined && !currency) {
      reading.faults.push({ field: 'feeds-paid', code: 'currency-missing' });
    }
    const of = reading.amount('feeds-portion', portion, 'g');
    const written = isBench ? undefined : reading.weights('feeds-weights', weights);
    const pile = isBench
      ? ((await this.#app.sheet()).read.pile ?? []).filter(line => line.cut && line.pieces.length > 0)
      : cut && written ? [{ cut, count: written.count, totalWeight: written.weight, weightIs }] : [];
    if (written && !cut) {
      reading.faults.push({ field: 'feeds-cut', code: 'cut-missing' });
    }
    return {
      faults: reading.faults, isEmpty: pile.length === 0,
      request: pile.length > 0 && reading.faults.length === 0
        ? withoutBlanks({ pile, portion: of, appetite: of ? undefined : appetite, paid: amount === undefined ? undefined : { amount, currency } })
        : undefined,
    };
  }

  #outcome(answer) {
    const unit = boughtIn(this.#app.settings);
    const { portions, lines, edible, cost } = answer;
    const nameOf = id => this.#cuts.find(cut => cut.value === id)?.text ?? id;
    return [
      make('p', { class: 'result' }, make('strong', { class: 'figure' }, showNumber(portions.typical)), ` ${say('people.unit.portions')}`),
      drawn(say('people.portions'), say('feeds.words', { portions: countBand(portions), portion: portionIn(lines[0].portion, unit) }), portions, say('people.unit.portions')),
      make('p', null, say('feeds.edible', { edible: weightsIn(edible, unit) })),
      lines.length > 1 ? make('ul', { class: 'buys' }, lines.map(line => make('li', null,
        say('feeds.line', { cut: nameOf(line.cut), weight: weightIn(line.weight, unit), portions: countBand(line.portions) })))) : null,
      cost ? make('p', { id: 'feeds-cost' }, say('people.cost', { total: money(cost.total), each: costInWords(cost, unit, 'edible') })) : null,
      findingsOf(answer.findings),
    ].filter(Boolean);
  }
}

// What is wrong with the pile of the bench is mended there, and said here beside the choice of it.
function fieldOf(pointer, isBench) {
  const [, group, , member] = pointer.split('/');
  return group !== 'pile' ? `feeds-${fields[group] ?? 'portion'}` : isBench ? 'feeds-of' : `feeds-${fields[member] ?? 'weights'}`;
}
