// Sentences written beforehand or by the computation, which writes its numbers with a point like JSON: here they are written as
// the reader's locale does.
import { locale, writeNumber } from './numbers.js';

// The members of an answer that are sentences; ids, codes and places in a source stay as they are.
const sentences = new Set(['message', 'advice', 'detail', 'text']);
const names = new Set(['name']);

// Not a part of a word, nor a place in the Code of Federal Regulations: 424.21(c) is no number.
const number = /(?<![\p{L}\d.,]|CFR )\d+(?:\.(\d+))?(?![\p{L}\d(]|\.\d)/gu;

const isPlain = writeNumber(0.5) === '0.5';

/** A sentence in which every number is written in the locale, with the decimals it has. */
export function said(sentence) {
  return isPlain ? sentence : sentence.replace(number, (written, { length } = '') =>
    new Intl.NumberFormat(locale, { useGrouping: false, minimumFractionDigits: length, maximumFractionDigits: length }).format(written));
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
