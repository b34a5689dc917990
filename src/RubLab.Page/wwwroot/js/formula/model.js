// A formula in the making: what is written in its fields, and the formula it reads as.
import { readAmount } from '../words/amounts.js';
import { readNumber, showNumber } from '../words/numbers.js';
import { readPile } from '../words/weights.js';

const amountUnits = ['g', 'kg', 'oz', 'lb', 'tsp', 'tbsp', 'cup', 'mL', 'g/kg', '%', 'parts-by-mass', 'parts-by-volume'];
const liquidUnits = ['%-of-liquid', '%-of-water'];
export const kinds = ['dry-brine', 'rub', 'slather', 'injection', 'soak', 'mop', 'sauce'];
export const bases = ['green', 'cooked', 'portion', 'area'];

const blankLine = () => ({ ingredient: '', form: '', amount: '', unit: 'g', salt: '', nitrite: '', nitrate: '' });

/** The units a line of this kind can be written in, and the one it is in. */
export function unitsFor(kind, unit) {
  const units = isLiquid(kind) ? [...liquidUnits, ...amountUnits] : amountUnits;
  return units.includes(unit) ? units : [...units, unit];
}

export const isLiquid = kind => kind === 'injection' || kind === 'soak';
export const isBoiled = kind => kind === 'sauce' || kind === 'mop';

/** A blank card, or the card of a formula. */
export function written(formula) {
  if (!formula) {
    return { name: '', kind: 'rub', base: 'green', dose: '', doseUnit: 'g/kg', writtenFor: '', writtenForUnit: 'lb', writtenForIs: 'green', reducedTo: '', lines: [blankLine()] };
  }
  const { name, kind, base = 'green', dose, writtenFor, writtenForIs = 'green', reducedTo, lines } = formula;
  return {
    name, kind, base, writtenForIs,
    dose: dose ? showNumber(dose.value) : '', doseUnit: dose?.unit ?? (base === 'area' ? 'g/100cm2' : 'g/kg'),
    writtenFor: writtenFor ? showNumber(writtenFor.value) : '', writtenForUnit: writtenFor?.unit ?? 'lb',
    reducedTo: reducedTo ? showNumber(reducedTo.value) : '',
    lines: lines.map(({ ingredient, form = '', amount, salt, nitriteFraction, nitrateFraction }) => ({
      ingredient, form, amount: amount ? showNumber(amount.value) : '', unit: amount?.unit ?? lines.find(line => line.amount)?.amount.unit ?? 'g',
      salt: bandText(salt), declaredSalt: salt, nitrite: percentText(nitriteFraction), nitrate: percentText(nitrateFraction),
    })),
  };
}

/** A card as it was kept, whichever version of the page wrote it. */
export function sound(card) {
  return { ...written(null), ...card, lines: card.lines.map(line => ({ ...blankLine(), nitrite: percentText(line.nitriteFraction), nitrate: percentText(line.nitrateFraction), ...line })) };
}

export function addLine(card) {
  card.lines.push({ ...blankLine(), unit: card.lines.at(-1)?.unit ?? 'g' });
}

/**
 * @returns {{authored: object, faults: {field: string, code: string, values?: object}[], isBlank: boolean}} the formula as
 * it would be sent; lines without an ingredient and an amount are passed over.
 */
export function readCard(card, measures) {
  const faults = [];
  const rows = card.lines.map((line, i) => ({ line, i })).filter(({ line }) => line.ingredient || line.amount.trim());
  const lines = rows.map(({ line, i }) => ({
    ingredient: line.ingredient || undefined,
    form: line.form || undefined,
    amount: amountOf(line, i, measures, faults),
    salt: saltOf(line, i, faults),
    nitriteFraction: fraction(line.nitrite, `nitrite-${i}`, faults),
    nitrateFraction: fraction(line.nitrate, `nitrate-${i}`, faults),
  }));
  const authored = JSON.parse(JSON.stringify({
    name: card.name.trim(),
    kind: card.kind,
    base: card.base === 'green' ? undefined : card.base,
    dose: figure(card.dose, card.base === 'area' ? 'g/100cm2' : card.doseUnit, 'dose', faults),
    writtenFor: meatOf(card, faults),
    writtenForIs: card.writtenFor.trim() && card.writtenForIs === 'purchase' ? 'purchase' : undefined,
    reducedTo: isBoiled(card.kind) ? figure(card.reducedTo, '%', 'reducedTo', faults) : undefined,
    lines,
  }));
  return { authored, faults, isBlank: rows.length === 0, rows: rows.map(({ i }) => i) };
}

/** The field on the card that an error of the API is about. */
export function fieldOf(pointer, rows) {
  const [, member, index, part] = pointer.split('/');
  if (member === 'lines') {
    const i = rows[Number(index)];
    const name = { ingredient: 'ingredient', form: 'form', salt: 'salt', nitriteFraction: 'nitrite', nitrateFraction: 'nitrate' }[part] ?? 'amount';
    return i === undefined ? 'lines' : `${name}-${i}`;
  }
  return ['name', 'kind', 'base', 'dose', 'writtenFor', 'reducedTo'].includes(member) ? member : 'lines';
}

function amountOf(line, i, measures, faults) {
  if (!line.amount.trim()) {
    return undefined;
  }
  const { amount, code, values } = readAmount(line.amount, measures, line.unit);
  if (code) {
    faults.push({ field: `amount-${i}`, code, values });
  }
  return amount;
}

// Read as on the bench, so that "5,2 kg" and "3 lb 9 oz" say their unit themselves.
function meatOf({ writtenFor, writtenForUnit }, faults) {
  const read = readPile(writtenFor, writtenForUnit);
  const [fault] = read.pieces.length > 1 ? [{ code: 'unreadable', values: { text: writtenFor.trim() } }] : read.faults;
  if (fault) {
    faults.push({ field: 'writtenFor', code: fault.code, values: fault.values });
    return undefined;
  }
  return read.pieces[0]?.weight;
}

function figure(text, unit, field, faults) {
  if (!text.trim()) {
    return undefined;
  }
  const { value, other } = readNumber(text);
  if (value === undefined || other !== undefined) {
    faults.push({ field, code: value === undefined ? 'not-a-number' : 'either', values: { text: text.trim(), value, other, unit } });
    return undefined;
  }
  return { value, unit };
}

// As the API gives it back, so that what was sent and what came back can be told to be the same.
function saltOf({ salt, declaredSalt }, i, faults) {
  if (declaredSalt && salt === bandText(declaredSalt)) {
    return declaredSalt;
  }
  const read = figure(salt, '%', `salt-${i}`, faults);
  return read && { low: read.value, typical: read.value, high: read.value, unit: '%' };
}

// A fraction is written in percent, as packs declare it; twelve digits keep 0.6 % the 0.006 it means. Below 1 the sign is asked
// for: a part of 1 taken for a percent is a hundredth of the nitrite that is there.
function fraction(text, field, faults) {
  const [, number, sign] = /^\s*(.*?)\s*(%?)\s*$/.exec(text);
  const read = figure(number, '%', field, faults);
  if (read && sign === '' && read.value > 0 && read.value < 1) {
    faults.push({ field, code: 'content-either', values: { text: number, percent: `${showNumber(read.value)} %`, part: `${showNumber(Number((read.value * 100).toPrecision(12)))} %` } });
    return undefined;
  }
  return read && Number((read.value / 100).toPrecision(12));
}

function percentText(fraction) {
  return fraction === undefined ? '' : `${showNumber(Number((fraction * 100).toPrecision(12)))} %`;
}

function bandText(band) {
  return !band ? '' : band.low === band.high ? showNumber(band.typical) : `${showNumber(band.low)} – ${showNumber(band.high)}`;
}
