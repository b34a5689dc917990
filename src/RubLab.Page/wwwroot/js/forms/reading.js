// Reads the fields of a form into members of a request, and says beside which field what cannot be read.
import { readAmount, readLength } from '../words/amounts.js';
import { locale, readNumber, showNumber } from '../words/numbers.js';
import { readPile, sumOf } from '../words/weights.js';

const measures = {
  time: { min: ['min', 'minute', 'minutes'], h: ['h', 'hr', 'hrs', 'hour', 'hours'], d: ['d', 'day', 'days'] },
  temperature: { C: ['c', '°c', 'celsius'], F: ['f', '°f', 'fahrenheit'] },
};

const sum = /^(\p{Sc}|[A-Za-z]{3})?\s*([\u2212-])?\s*([\d.,'\u2019\s]*\d)\s*(\p{Sc}|[A-Za-z]{3})?$/u;

export class Reading {
  #settings;

  /** @param {import('../kept/settings.js').Settings} settings */
  constructor(settings) {
    this.#settings = settings;
    this.faults = [];
  }

  /** An amount with its unit, or undefined where nothing is written; `bare` is the unit of a number alone. */
  amount(field, text, bare) {
    if (text.trim() === '') {
      return undefined;
    }
    const { amount, code, values } = readAmount(text, this.#settings.measures, bare);
    return code ? this.#fault(field, code, values) : amount;
  }

  /** A time or a temperature; without `bare` a number alone is asked about. */
  measure(field, text, kind, bare) {
    if (text.trim() === '') {
      return undefined;
    }
    const [, number, word] = /^(.*?\d)\s*(\D*)$/.exec(text.trim()) ?? [];
    const { value, other } = number === undefined ? {} : readNumber(number.replace(/^[\u2212-]/, ''));
    const spelling = (word ?? '').trim().replace(/\.$/, '').toLowerCase();
    const unit = spelling === '' ? bare : Object.keys(measures[kind]).find(symbol => measures[kind][symbol].includes(spelling));
    if (value === undefined || other !== undefined) {
      return this.#fault(field, 'not-a-number', { text: text.trim() });
    }
    if (!unit) {
      return spelling === '' ? this.#fault(field, 'unit-missing', { text: text.trim() }) : this.#fault(field, 'unknown-measure', { unit: word.trim() });
    }
    return { value: /^[\u2212-]/.test(number) ? -value : value, unit };
  }

  /** A length with its unit. */
  length(field, text) {
    if (text.trim() === '') {
      return undefined;
    }
    const { amount, code, values } = readLength(text);
    return code ? this.#fault(field, code, values) : amount;
  }

  /** A whole number; 0 or more. */
  count(field, text) {
    if (text.trim() === '') {
      return undefined;
    }
    const { value, other } = readNumber(text);
    const whole = other ?? value;
    return Number.isInteger(whole) ? whole : this.#fault(field, 'not-whole', { text: text.trim() });
  }

  /** A number without a unit. */
  figure(field, text) {
    return this.money(field, text);
  }

  /** A sum of money; the currency may stand beside it, if it is the one all prices are in. */
  money(field, text, currency) {
    const written = text.trim();
    if (written === '') {
      return undefined;
    }
    const [, before, minus, number, after] = sum.exec(written) ?? [];
    const named = before || after;
    if (named && currency && !signsOf(currency).includes(named.toUpperCase())) {
      return this.#fault(field, 'currency-mixed', { text: written, currency });
    }
    const { value, other } = number === undefined ? {} : readNumber(number);
    if (value === undefined || other !== undefined) {
      return this.#fault(field, value === undefined ? 'not-a-number' : 'either', { text: written, value, other, unit: '' });
    }
    return minus ? -value : value;
  }

  /** A part in percent: one figure, or its ends, or its ends and what is likeliest between them. */
  estimate(field, text) {
    if (text.trim() === '') {
      return undefined;
    }
    const figures = text.replaceAll('%', '').split(/\s*(?:[-\u2013\u2014\u2026]|\bto\b)\s*/).map(part => readNumber(part).value);
    if (figures.length > 3 || figures.includes(undefined)) {
      return this.#fault(field, 'not-a-part', { text: text.trim() });
    }
    const [low, ...rest] = figures;
    const high = rest.at(-1);
    return high === undefined ? { value: low, unit: '%' } : { low, typical: rest.length === 2 ? rest[0] : (low + high) / 2, high, unit: '%' };
  }

  /** What a pack declares of a cure, as a part of 1. A number below 1 without its sign could be either, and is asked about. */
  content(field, text) {
    const [, number, sign] = /^\s*(.*?)\s*(%?)\s*$/.exec(text);
    if (number === '' && sign === '') {
      return undefined;
    }
    const { value, other } = readNumber(number);
    if (value === undefined || other !== undefined) {
      return this.#fault(field, 'not-a-number', { text: text.trim() });
    }
    if (sign === '' && value > 0 && value < 1) {
      const choices = [value, Number((value * 100).toPrecision(12))].map(percent => `${showNumber(percent)} %`);
      return this.#fault(field, 'content-either', { text: text.trim(), percent: choices[0], part: choices[1] }, choices);
    }
    if (value <= 0 || value > 100) {
      return this.#fault(field, 'content-range', { text: text.trim() });
    }
    return Number((value / 100).toPrecision(12));
  }

  /** Weights, one a line, each for itself: `[{ weight, written }]`. */
  pieces(field, text) {
    const { pieces, faults } = readPile(text, this.#settings.bareUnit);
    this.faults.push(...faults.map(fault => ({ ...fault, field, choices: undefined })));
    return pieces;
  }

  /** The same as one weight and how many they are: `{ weight, count }`. */
  weights(field, text) {
    const pieces = this.pieces(field, text);
    const weight = this.sum(field, pieces);
    return weight && { weight, count: pieces.length };
  }

  /** What pieces weigh together. */
  sum(field, pieces) {
    if (pieces.length === 0) {
      return undefined;
    }
    const { unit } = pieces[0].weight;
    return pieces.some(({ weight }) => weight.unit !== unit) ? this.#fault(field, 'two-units', {}) : sumOf(pieces);
  }

  /** One weight. */
  weight(field, text) {
    const read = this.weights(field, text);
    return read && read.count > 1 ? this.#fault(field, 'one-weight', {}) : read?.weight;
  }

  #fault(field, code, values, choices) {
    this.faults.push({ field, code, values, choices });
    return undefined;
  }
}

// How a currency may be written beside a sum: its code, and its sign where it has one.
function signsOf(currency) {
  const signOf = currencyDisplay => {
    try {
      return new Intl.NumberFormat(locale, { style: 'currency', currency, currencyDisplay }).formatToParts(0).find(part => part.type === 'currency').value;
    } catch {
      // Three letters that are no currency: the computation says so.
      return currency;
    }
  };
  return [currency, signOf('symbol'), signOf('narrowSymbol')].map(sign => sign.toUpperCase());
}

/** A request without the members that say nothing. */
export function withoutBlanks(request) {
  return JSON.parse(JSON.stringify(request));
}
