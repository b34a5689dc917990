// A pile as read off a scale: one weight a line.
import { boughtIn } from './bought.js';
import { decimalsOf, readNumber, showFixed } from './numbers.js';

/** The page lists every piece, so it takes no more of them than a reader can. */
export const mostPieces = 2000;

// No piece of meat weighs a thousand of these, so in them a mark before three digits can only mean decimals.
const heavyUnits = new Set(['kg', 'lb']);

const unitOf = new Map(Object.entries({
  g: ['g', 'gr', 'gram', 'grams', 'gramme', 'grammes', 'gramm'],
  kg: ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms', 'kilogramm'],
  oz: ['oz', 'ounce', 'ounces'],
  lb: ['lb', 'lbs', 'pound', 'pounds', '#'],
}).flatMap(([unit, words]) => words.map(word => [word, unit])));

const number = '[\\d.,][\\d.,\\s\'\\u2019]*?';
const times = '\\s*[x\\u00d7*]\\s*';
const countFirst = new RegExp(`^(\\d+)${times}(.+)$`, 'iu');
const countLast = new RegExp(`^(.+\\p{L}\\.?)${times}(\\d+)$`, 'iu');
const single = new RegExp(`^(${number})\\s*(\\p{L}+|#)?\\.?$`, 'iu');
const range = new RegExp(`^(?:(\\d+)${times})?(${number})\\s*(?:\\p{L}+|#)?\\.?\\s*(?:-|\\u2013|\\u2014|\\bto\\b)\\s*(${number})\\s*(\\p{L}+|#)?\\.?$`, 'iu');
const poundsAndOunces = new RegExp(`^(\\d+)\\s*(\\p{L}+|#)\\.?\\s*,?\\s*(${number})\\s*(\\p{L}+)\\.?$`, 'iu');

/**
 * Reads every line that says something.
 * @param {string} text what stands in the field.
 * @param {string} bareUnit the unit of a number that names none.
 * @param {number} [before] how many pieces other lines of the pile have already.
 * @returns {{pieces: {weight: {value: number, unit: string}, written: string, scale: 'kg' | 'lb' | 'lb-oz', line: number}[], faults: {line: number, code: string, values: object}[]}}
 * lines are counted from 1.
 */
export function readPile(text, bareUnit, before = 0) {
  const pieces = [];
  const faults = [];
  const entries = text.split(/\r\n|\r|\n/).flatMap((row, index) => row.split(/[;\t]/).map(written => ({ written, line: index + 1 })));
  entries.forEach(({ written, line }) => {
    if (written.trim() === '') {
      return;
    }
    const read = readLine(written.trim(), bareUnit);
    if (read.code) {
      faults.push({ line, code: read.code, values: { ...read.values, text: shown(written.trim()) }, ...(read.choices && { written: written.trim(), choices: read.choices }) });
    } else if (read.count < 1) {
      faults.push({ line, code: 'no-count', values: { text: shown(written.trim()) } });
    } else if (before + pieces.length + read.count > mostPieces) {
      faults.push({ line, code: 'too-many', values: { most: mostPieces } });
    } else {
      for (let i = 0; i < read.count; i++) {
        pieces.push({ weight: read.weight, written: read.written, scale: read.scale, line });
      }
    }
  });
  return { pieces, faults };
}

function readLine(written, bareUnit) {
  const between = rangeOf(written, bareUnit);
  if (between) {
    return between;
  }
  const last = countLast.exec(written);
  if (last) {
    return { ...readWeight(last[1], bareUnit), count: Number(last[2]) };
  }
  const first = countFirst.exec(written);
  return first
    ? { ...readWeight(first[2], bareUnit), count: Number(first[1]) }
    : { ...readWeight(written, bareUnit), count: 1 };
}

function readWeight(written, bareUnit) {
  const both = poundsAndOunces.exec(written);
  if (both && unitOf.get(both[2].toLowerCase()) === 'lb' && unitOf.get(both[4].toLowerCase()) === 'oz') {
    const ounces = readNumber(both[3]).value;
    return ounces < 16
      ? { weight: { value: Number(both[1]) + ounces / 16, unit: 'lb' }, written, scale: 'lb-oz' }
      : { code: 'ounces' };
  }
  const one = single.exec(written);
  if (!one) {
    return { code: 'unreadable' };
  }
  const unit = one[2] === undefined ? bareUnit : unitOf.get(one[2].toLowerCase());
  if (!unit) {
    return { code: 'unknown-unit', values: { unit: shown(one[2]) } };
  }
  const { value, other } = readNumber(one[1]);
  if (value === undefined) {
    return { code: 'unreadable' };
  }
  if (value === 0) {
    return { code: 'nothing' };
  }
  return other !== undefined && !heavyUnits.has(unit)
    ? { code: 'either', values: { value, other, unit }, choices: [`${plainly(value)} ${unit}`, `${other} ${unit}`] }
    : { weight: { value, unit }, written: one[2] === undefined ? `${written} ${unit}` : written, scale: boughtIn({ bareUnit: unit }) };
}

// A range is no weight: the cook says which.
function rangeOf(written, bareUnit) {
  const found = range.exec(written);
  const [low, high] = found ? [readNumber(found[2]).value, readNumber(found[3]).value] : [];
  if (low === undefined || high === undefined || low >= high) {
    return null;
  }
  const unit = found[4] === undefined ? bareUnit : unitOf.get(found[4].toLowerCase());
  const count = found[1] === undefined ? '' : `${found[1]} x `;
  const weights = [low, Math.round((low + high) * 500) / 1000, high];
  return unit ? { code: 'range', choices: weights.map(value => `${count}${plainly(value)} ${unit}`) } : null;
}

// As it reads back without doubt: three decimals could be thousands.
function plainly(value) {
  const text = showFixed(value, Math.max(0, decimalsOf(value)));
  return readNumber(text).other === undefined ? text : showFixed(value, decimalsOf(value) + 1);
}

function shown(text) {
  return text.length > 30 ? `${text.slice(0, 30)}…` : text;
}

/** What pieces of one unit weigh together. Weights of a scale have few digits; what lies behind a millionth comes from adding them. */
export function sumOf(pieces) {
  return { value: Number(pieces.reduce((sum, { weight }) => sum + weight.value, 0).toFixed(6)), unit: pieces[0].weight.unit };
}
