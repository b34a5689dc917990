// Cooks as a notebook has them, one a line: a day if it was another, the weight before, the weight after.
import { readPile, sumOf } from '../words/weights.js';

const day = /^(\d{4}-\d{2}-\d{2})(?=\D|$)[\s,:]*/;
const between = /\s*(?:->|=>|→|[-–—|;\t]|\bto\b)\s*/i;
const gap = /,?\s+/g;
const words = /\p{L}+|#/gu;

/**
 * Reads every line that says something.
 * @param {string} text what stands in the field.
 * @param {{bareUnit: string, date: string, method?: string, beforeIs: string, trimLoss?: object}} common what holds for all lines.
 * @returns {{records: object[], lines: number[], faults: {line: number, code: string, values: object}[]}} `lines` are the records' own, counted from 1.
 */
export function readCooks(text, { bareUnit, date, method, beforeIs, trimLoss }) {
  const records = [];
  const lines = [];
  const faults = [];
  text.split(/\r\n|\r|\n/).forEach((row, index) => {
    const written = row.trim();
    if (written === '') {
      return;
    }
    const own = day.exec(written);
    const { before, after, code, values } = readPair(own ? written.slice(own[0].length) : written, bareUnit);
    if (code) {
      faults.push({ line: index + 1, code, values: { text: shown(written), ...values } });
    } else {
      lines.push(index + 1);
      records.push(JSON.parse(JSON.stringify({ date: own ? own[1] : date, method, before, beforeIs, trimLoss, after })));
    }
  });
  return { records, lines, faults };
}

function readPair(written, bareUnit) {
  const parts = written.split(between).filter(Boolean);
  if (parts.length === 2) {
    return pairOf(parts, bareUnit);
  }
  if (parts.length !== 1) {
    return { code: 'cook' };
  }
  // Nothing between them but a gap: only one of the gaps leaves a weight on either side.
  const pairs = [...written.matchAll(gap)].map(({ index, 0: mark }) => pairOf([written.slice(0, index), written.slice(index + mark.length)], bareUnit));
  const read = pairs.filter(pair => !pair.code);
  return read.length === 1 ? read[0] : read.length === 0 && pairs.find(pair => !['unreadable', 'cook'].includes(pair.code)) || { code: 'cook' };
}

// A unit may stand beside one of the two alone.
function pairOf([first, second], bareUnit) {
  const units = [first, second].map(part => (part.match(words) ?? []).filter(word => !/^x$/i.test(word)));
  const before = weightOf(first, units[0].length === 0 && units[1].length === 1 ? units[1][0] : bareUnit, units[0]);
  const after = weightOf(second, units[1].length === 0 && units[0].length === 1 ? units[0][0] : bareUnit, units[1]);
  return before.code ? before : after.code ? after : { before: before.weight, after: after.weight };
}

function weightOf(text, unit, own) {
  const { pieces, faults } = readPile(own.length === 0 ? `${text} ${unit}` : text, unit);
  if (faults.length > 0) {
    return { code: faults[0].code, values: { ...faults[0].values, text: shown(text) } };
  }
  return pieces.length === 0 ? { code: 'cook' } : { weight: sumOf(pieces) };
}

function shown(text) {
  return text.length > 30 ? `${text.slice(0, 30)}…` : text;
}
