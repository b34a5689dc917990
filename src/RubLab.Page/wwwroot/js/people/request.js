// From guests and a menu to the body of POST /v1/purchase-plans, and from a pointer in its errors back to the field.
import { Reading, withoutBlanks } from '../forms/reading.js';
import { boughtIn } from '../words/bought.js';
import { blankRow } from './menu.js';

export const appetites = ['small', 'ordinary', 'hearty'];

export const blank = {
  small: '', ordinary: '', hearty: '', reserve: '', buyFor: 'typical', currency: '', portions: '', countsBench: 'yes', countsMixes: 'no',
  menu: [blankRow],
  packs: [{ ingredient: '', form: '', size: '', price: '', stock: '' }],
  sheets: [{ title: '', body: '' }],
};

/** The currency prices are in: as written here, else as set for the kitchen. */
export function currencyOf(written, settings) {
  return written.currency.trim().toUpperCase() || settings.currency;
}

/** @returns {{request?: object, faults: object[], groups: string[], rows: number[]}} where the request's guests and menu stand in the form. */
export function readPeople(written, library, settings) {
  const reading = new Reading(settings);
  const counts = appetites.map(appetite => ({ appetite, count: reading.count(`people-${appetite}`, written[appetite]) }));
  const guests = counts.filter(({ count }) => count > 0);
  const nobody = counts.find(({ count }) => count === 0);
  if (nobody && guests.length === 0) {
    reading.faults.push({ field: `people-${nobody.appetite}`, code: 'nobody' });
  }
  const reserve = reading.amount('people-reserve', written.reserve, '%');
  const known = new Set(library.items.map(item => item.id));
  const rows = written.menu.map((row, i) => row.cut ? i : -1).filter(i => i >= 0);
  const seen = new Map();
  const menu = rows.map(i => {
    const { cut, first, then } = written.menu[i];
    const count = (seen.get(cut) ?? 0) + 1;
    seen.set(cut, count);
    const formulas = [...new Set([first, then].map(id => library.nowCalled(id)).filter(id => known.has(id)))].map(formulaId => ({ formulaId }));
    return {
      id: count === 1 ? cut : `${cut}-${count}`, cut, ...readRow(written.menu[i], i, reading, currencyOf(written, settings), boughtIn(settings)),
      formulas: formulas.length > 0 ? formulas : undefined,
    };
  });
  const canPlan = guests.length > 0 && menu.length > 0 && reading.faults.length === 0;
  return {
    faults: reading.faults, groups: guests.map(({ appetite }) => appetite), rows,
    request: canPlan ? withoutBlanks({ guests, menu, reserve, buyFor: written.buyFor, boughtIn: boughtIn(settings) }) : undefined,
  };
}

function readRow({ share, price, per, piece, trim, method }, i, reading, currency, unit) {
  const amount = reading.money(`people-price-${i}`, price, currency);
  if (amount !== undefined && !currency) {
    reading.faults.push({ field: 'people-currency', code: 'currency-missing' });
  }
  return {
    share: reading.amount(`people-share-${i}`, share, '%'),
    pieceWeight: reading.amount(`people-piece-${i}`, piece, unit),
    trimLoss: reading.amount(`people-trim-${i}`, trim, '%'),
    method: method || undefined,
    price: amount !== undefined && currency ? { amount, currency, per: per === 'weight' ? { value: 1, unit } : undefined } : undefined,
  };
}

const fields = { share: 'share', price: 'price', formulas: 'first', pieceWeight: 'piece', trimLoss: 'trim', method: 'method' };

/** The field that an error of the API is about. */
export function fieldOf(pointer, { groups, rows }) {
  const [, member, index, part] = pointer.split('/');
  if (member === 'guests') {
    return `people-${groups[Number(index)] ?? 'ordinary'}`;
  }
  if (member === 'menu' && index === undefined) {
    return `people-share-${rows[0] ?? 0}`;
  }
  if (member === 'menu') {
    return part === 'price' && pointer.endsWith('/currency') ? 'people-currency' : `people-${fields[part] ?? 'cut'}-${rows[Number(index)] ?? 0}`;
  }
  return member === 'reserve' ? 'people-reserve' : 'people-ordinary';
}
