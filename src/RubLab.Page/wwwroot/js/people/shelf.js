// What each ingredient is sold in and how much of it is in the house, beside what the list comes to.
import { make, byId, field, numberInput } from '../dom.js';
import { Reading } from '../forms/reading.js';
import { names, quantity } from '../words/show.js';
import { say, sayCount } from '../words/texts.js';
import { money } from './money.js';

const keyOf = ({ ingredient, form }) => `${ingredient}/${form}`;
const blank = { size: '', price: '', stock: '' };

export class Shelf {
  #settings;
  #written;
  #shown = '';

  /** @param {{packs: object[]}} written changed in place. */
  constructor(settings, written, onChange) {
    this.#settings = settings;
    this.#written = written;
    this.element = make('ol', { class: 'packs', id: 'shopping-items' });
    this.element.addEventListener('input', ({ target: { name, value } }) => {
      const [member, ingredient, form] = name.split('/');
      let row = this.#rowOf({ ingredient, form });
      if (!row) {
        row = { ingredient, form, ...blank };
        this.#written.packs.push(row);
      }
      row[member] = value;
      onChange();
    });
  }

  /** @returns {{packs: object[], stock: object[], faults: object[], fieldOf: (pointer: string) => string | undefined}} */
  read(items, currency) {
    const reading = new Reading(this.#settings);
    const packs = [];
    const stock = [];
    const at = { packs: [], stock: [] };
    items.forEach((item, i) => {
      const { size, price, stock: held } = this.#rowOf(item) ?? blank;
      const of = { ingredient: item.ingredient, form: item.form };
      const holds = reading.amount(`pack-size-${i}`, size, 'g');
      const amount = reading.money(`pack-price-${i}`, price, currency);
      const there = reading.amount(`pack-stock-${i}`, held, 'g');
      if (holds) {
        at.packs.push(i);
        packs.push({ ...of, size: holds, price: amount !== undefined && currency ? { amount, currency } : undefined });
      } else if (amount !== undefined && size.trim() === '') {
        reading.faults.push({ field: `pack-size-${i}`, code: 'pack-missing' });
      }
      if (amount !== undefined && !currency) {
        reading.faults.push({ field: `pack-price-${i}`, code: 'currency-missing' });
      }
      if (there) {
        at.stock.push(i);
        stock.push({ ...of, amount: there });
      }
    });
    return { packs, stock, faults: reading.faults, fieldOf: pointer => fieldOf(pointer, at) };
  }

  /** The fields stay as they are while the cook writes in them. */
  build(items) {
    const wanted = items.map(keyOf).join();
    if (wanted === this.#shown) {
      return;
    }
    this.#shown = wanted;
    this.element.replaceChildren(...items.map((item, i) => {
      const { name, form } = names(item);
      const row = this.#rowOf(item) ?? blank;
      const entry = (member, label) => field(`pack-${member}-${i}`, say(label), numberInput(`${member}/${keyOf(item)}`, row[member]));
      return make('li', { 'data-key': keyOf(item) },
        make('p', { class: 'title' }, name, form ? make('small', null, ` ${form}`) : null),
        make('p', { id: `shopping-needed-${i}` }),
        make('p', { class: 'figure', id: `shopping-amount-${i}` }),
        entry('stock', 'people.stock'), entry('size', 'people.pack'), entry('price', 'people.packPrice'));
    }));
  }

  show(items) {
    items.forEach((item, i) => {
      byId(`shopping-needed-${i}`).textContent = say('people.needed', { amount: neededInWords(item) });
      byId(`shopping-amount-${i}`).textContent = item.toBuy.value > 0 ? say('people.buy', { what: toBuyInWords(item) }) : toBuyInWords(item);
    });
  }

  #rowOf({ ingredient, form }) {
    return this.#written.packs.find(pack => pack.ingredient === ingredient && pack.form === form);
  }
}

/** What the sheets take of an ingredient, in grams and spoons, and what of it is there. */
export function neededInWords({ needed, spoon, stock }) {
  return [whole(needed), spoon?.text, stock && say('people.onHand', { amount: whole(stock) })].filter(Boolean).join(', ');
}

/** What to buy of it. */
export function toBuyInWords({ toBuy, packs, packSize, leftOver, outlay }) {
  if (toBuy.value === 0) {
    return say('people.enough');
  }
  return [
    packs === undefined ? whole(toBuy) : sayCount('people.packs', packs, { size: quantity(packSize), left: whole(leftOver) }),
    outlay ? money(outlay) : '',
  ].filter(Boolean).join(', ');
}

function fieldOf(pointer, at) {
  const [, group, index, part] = pointer.split('/');
  const member = group === 'stock' ? 'stock' : part === 'price' ? 'price' : 'size';
  return at[group] ? `pack-${member}-${at[group][Number(index)] ?? 0}` : undefined;
}

function whole({ value, unit }) {
  return unit === 'g' && value >= 1000
    ? quantity({ value: Number((value / 1000).toFixed(2)), unit: 'kg' })
    : quantity({ value: Number(value.toFixed(unit === 'g' ? 0 : 1)) || Number(value.toPrecision(2)), unit });
}
