// What could be changed so that a check of salt comes out inside its range: a dose, or one line of a formula. Found by
// asking the computation again, never by an equation of the page's own.
import * as engine from '../engine.js';
import { showNumber } from '../words/numbers.js';
import { amount, lineAmount, names, quantity } from '../words/show.js';
import { say } from '../words/texts.js';

const tries = 6;

/**
 * @param {object} check the check that is not inside.
 * @param {string} line the line of the pile it is of.
 * @param {{request: object, formulas: object, answer: object}} sheet
 * @returns {{text: string, change: string, treatment: number, dose?: object, formula?: object}[]}
 */
export function mendingsFor(check, line, sheet) {
  if (check.restore === undefined || !['below', 'above'].includes(check.typicalVerdict) || !check.measured) {
    return [];
  }
  const target = check.typicalVerdict === 'above' ? check.highest : check.lowest;
  const salted = sheet.answer.treatments
    .map((treatment, t) => ({ treatment, t, grams: saltOf(sheet, line, t) }))
    .filter(({ grams }) => grams > 0)
    .sort((a, b) => b.grams - a.grams);
  return salted.length === 0 ? [] : [byDose(check, line, sheet, salted[0].t, target), byLine(check, line, sheet, salted[0].t, target)].filter(Boolean);
}

function saltOf({ answer }, line, t) {
  return answer.salt.find(salt => salt.line === line).ledger.entries
    .filter(entry => entry.treatment === t).reduce((sum, entry) => sum + entry.salt.typical, 0);
}

function byDose(check, line, sheet, t, target) {
  const now = sheet.answer.treatments[t].dose;
  const put = value => withTreatment(sheet.request, t, { dose: { value, unit: now.unit } });
  const found = seek(now.value, target, check, line, sheet.formulas, put);
  return found && {
    treatment: t, dose: { value: found.value, unit: now.unit }, formulas: sheet.formulas,
    text: say('mend.dose', { name: sheet.answer.treatments[t].name, dose: quantity({ value: found.value, unit: now.unit }) }),
    change: inGrams(sheet.answer.treatments[t], found.answer.treatments[t], sheet),
  };
}

// The line that brings most salt, with everything else of the formula as it is.
function byLine(check, line, sheet, t, target) {
  const source = sheet.request.treatments[t];
  const formula = source.formula ?? sheet.authored[source.formulaId];
  const entries = sheet.answer.salt.find(salt => salt.line === line).ledger.entries.filter(entry => entry.treatment === t);
  const index = entries.reduce((best, entry, i) => entry.salt.typical > entries[best].salt.typical ? i : best, 0);
  const now = formula.lines[index]?.amount;
  if (!now || source.dose || entries.length !== formula.lines.length || formula.lines.length < 2) {
    return null;
  }
  const changed = new Map();
  const found = seek(now.value, target, check, line, sheet.formulas, value => {
    const after = withAmount(formula, index, value);
    changed.set(value, after);
    return after && withTreatment(sheet.request, t, { formula: after, formulaId: undefined });
  });
  const { name } = names(formula.lines[index]);
  return found && {
    treatment: t, formula: changed.get(found.value),
    text: say('mend.line', { ingredient: name, amount: lineAmount({ value: found.value, unit: now.unit }), before: lineAmount(now) }),
    change: inGrams(sheet.answer.treatments[t], found.answer.treatments[t], sheet),
  };
}

// Where the formula has a dose it is held; else the other lines stay as they are written.
function withAmount(formula, index, value) {
  return formula.dose
    ? engine.changeFormula({ formula, line: index, amount: value, hold: 'dose' }).ok?.formula
    : { ...formula, lines: formula.lines.map((line, i) => i === index ? { ...line, amount: { ...line.amount, value } } : line) };
}

/** Secants on what the computation answers, then the figure a cook would write, on the safe side of the bound. */
function seek(start, target, check, line, formulas, put) {
  const measure = value => {
    const request = put(value);
    const { ok } = request ? engine.checkSalt(ofLine(request, line), formulas) : {};
    return { request, is: ok?.ledger.checks.find(other => other.id === check.id)?.measured?.typical };
  };
  let [a, b] = [{ value: start, is: check.measured.typical }, { value: start * (target > check.measured.typical ? 1.25 : 0.8) }];
  for (let i = 0; i < tries; i++) {
    b.is = measure(b.value).is;
    if (b.is === undefined || b.is === a.is) {
      return null;
    }
    if (Math.abs(b.is - target) < target * 1e-4) {
      break;
    }
    const next = b.value + (target - b.is) * (b.value - a.value) / (b.is - a.is);
    if (!(next > 0) || next > start * 100) {
      return null;
    }
    [a, b] = [b, { value: next }];
  }
  const above = check.typicalVerdict === 'above';
  for (const step of stepsOf(b.value)) {
    const value = Number(((above ? Math.floor : Math.ceil)(b.value / step - (above ? -1e-9 : 1e-9)) * step).toPrecision(6));
    const found = value > 0 ? measure(value) : {};
    if (above ? found.is <= target : found.is >= target) {
      const { ok } = engine.computeSheet({ ...found.request, pieces: 'none' }, formulas);
      return ok ? { value, answer: ok } : null;
    }
  }
  return null;
}

// First a tenth of its size class, then a hundredth: 17 rather than 17.04, 1.7 rather than 1.7045.
function stepsOf(value) {
  const power = 10 ** Math.floor(Math.log10(value));
  return [power / 10, power / 100, power / 1000];
}

// Salt needs no weights: the line and what goes on it are enough, however many pieces it has.
function ofLine({ pile, treatments, portion }, line) {
  const { pieces: _, ...rest } = pile.find(other => other.id === line);
  const on = treatments.filter(treatment => !treatment.on || treatment.on.includes(line)).map(({ on: __, ...treatment }) => treatment);
  return { pile: [rest], treatments: on, portion };
}

function withTreatment(request, t, change) {
  return JSON.parse(JSON.stringify({ ...request, treatments: request.treatments.map((treatment, i) => i === t ? { ...treatment, ...change } : treatment) }));
}

function inGrams(before, after, { request }) {
  const changes = after.lines.map((line, i) => ({ line, by: Number((line.toMix.value - before.lines[i].toMix.value).toPrecision(12)) })).filter(({ by }) => by !== 0);
  return changes.length === 0 ? say('mend.same') : changes.map(({ line, by }) => say(by > 0 ? 'mend.more' : 'mend.less', {
    name: names(line).name, by: amount({ value: Math.abs(by), unit: line.toMix.unit }, line.step ?? request.weighingStep),
    to: amount(line.toMix, line.step ?? request.weighingStep),
  })).join('; ');
}

/** A dose as a cook would write it. */
export function doseText({ value, unit }) {
  return `${showNumber(value)} ${unit}`;
}
