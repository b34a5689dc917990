// Sentences written beforehand or by the computation, which writes its numbers with a point like JSON: here they are written as
// the reader's locale does.
import { locale, writeNumber } from './numbers.js';

// The members of an answer that are sentences; ids, codes and places in a source stay as they are.
const sentences = new Set(['message', 'advice', 'detail', 'text']);
const names = new Set(['name']);

// Not a part of a word, nor a place in the Code of Federal Regulations: 424.21(c) is no number.
// Thousands are grouped from ten thousand on, so that no year is.
const number = /(?<![\p{L}\d.,]|CFR )(?:\d{1,3}(?:,\d{3})+|\d+)(?:\.(\d+))?(?![\p{L}\d(]|[.,]\d)/gu;
const groupedFrom = 10_000;

const isPlain = writeNumber(0.5) === '0.5';

/** A sentence in which every number is written in the locale, with the decimals it has. */
export function said(sentence) {
  return isPlain ? sentence : sentence.replace(number, (written, { length } = '') => {
    const value = written.replaceAll(',', '');
    return new Intl.NumberFormat(locale, { useGrouping: value >= groupedFrom, minimumFractionDigits: length, maximumFractionDigits: length }).format(value);
  });
}

/** What a computation answered, from its JSON. */
export function answerFrom(text) {
  return parsed(text, sentences);
}

/** What the reference data knows of a thing, from its JSON: its name is ours, and is written likewise. */
export function referenceFrom(text) {
  return parsed(text, names);
}

function parsed(text, members) {
  return JSON.parse(text, isPlain ? undefined : (member, value) => members.has(member) && typeof value === 'string' ? said(value) : value);
}
