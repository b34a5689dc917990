// A stack above a legal level: said at each treatment that brings some of it, with what would mend it, and drawn where the sheet would stand.
import { loadsOf, limitsOf } from '../cure/loads.js';
import { isRefusal, isRefused, refusal } from '../cure/refusal.js';
import { seek } from '../cure/seek.js';
import { make } from '../dom.js';
import * as engine from '../engine.js';
import { amount, names, quantity } from '../words/show.js';
import { say } from '../words/texts.js';

/**
 * The faults of a refused sheet, beside its treatments.
 * @param {object[]} errors of the API; others than refusals are passed over.
 * @param {{read: object, formulas: object, authored: object}} sheet
 * @param {(mending: object) => void} apply
 */
export function refusalsOf(errors, sheet, apply) {
  const refusals = errors.filter(isRefusal);
  return refusals.map(({ pointer, parameters }) => {
    const at = Number(pointer.split('/')[2]);
    const mendings = isStrictest(parameters, refusals) ? mendingsOf(at, parameters, sheet) : [];
    return refusal(`formula-${sheet.read.treatments[at]}`, parameters, { mendings: mendings.map(mending => ({ ...mending, apply: () => apply(mending) })) });
  });
}

// What meets the strictest level of an additive meets the others.
function isStrictest({ line, additive, highest }, refusals) {
  return refusals.every(({ parameters: other }) => other.line !== line || other.additive !== additive || other.highest >= highest);
}

/** What stands in place of a sheet that may not be weighed; nothing where something else is wrong with it. */
export function insteadOfRefused(errors, { read, formulas }, cutNames) {
  if (!isRefused(errors)) {
    return null;
  }
  const { ok } = engine.computeSheet({ ...read.request, purpose: 'check', pieces: 'none' }, formulas);
  const over = new Map(errors.map(({ parameters }) => [`${parameters.line}/${parameters.limit}`, parameters.overGrams]));
  return [
    make('p', { class: 'flag', id: 'sheet-refused' }, say('sheet.refused')),
    ...(ok?.salt ?? []).filter(({ ledger }) => limitsOf(ledger.checks).length > 0).map(({ line, ledger }) => make('section', { class: 'salt' },
      make('h3', null, ok.salt.length > 1 ? say('load.title.of', { name: cutNames.get(line) ?? line }) : say('load.title')),
      loadsOf(limitsOf(ledger.checks), { overGrams: check => over.get(`${line}/${check.id}`) }))),
  ];
}

// Less of one line of the formula, the rest as it is; or less of the whole.
function mendingsOf(at, { limit, line, additive, highest }, { read: { request }, formulas, authored }) {
  const treatment = request.treatments[at];
  const formula = treatment.formula ?? authored[treatment.formulaId];
  if (!formula || !(highest > 0)) {
    return [];
  }
  const measure = change => {
    const { ok } = engine.computeSheet({ ...changed(request, at, change), purpose: 'check', pieces: 'none' }, formulas);
    return ok?.salt.find(other => other.line === line).ledger.checks.find(check => check.id === limit)?.measured?.high;
  };
  const tried = (start, changeTo, words) => {
    const value = seek(start, highest, candidate => measure(changeTo(candidate)));
    if (value === undefined) {
      return null;
    }
    const change = changeTo(value);
    const { ok, errors } = engine.computeSheet({ ...changed(request, at, change), pieces: 'none' }, formulas);
    const isMet = ok || !errors.some(error => isRefusal(error) && error.parameters.limit === limit && error.parameters.line === line);
    return isMet ? { treatment: at, ...change, text: words(value), change: ok ? toWeigh(ok.treatments[at], request, additive) : '' } : null;
  };
  const byLine = formula.lines.flatMap((own, i) => carries(own, additive) && own.amount?.value > 0 ? [tried(
    own.amount.value,
    value => ({ formula: { ...formula, lines: formula.lines.map((other, j) => j === i ? { ...own, amount: { ...own.amount, value } } : other) } }),
    value => say('cure.mend', { name: names(own).name, amount: shown({ ...own.amount, value }), before: shown(own.amount) }),
  )] : []);
  const dose = treatment.dose ?? formula.dose;
  const byDose = dose && !treatment.liquid ? [tried(dose.value, value => ({ dose: { ...dose, value } }), value => say('mend.dose', { name: formula.name, dose: quantity({ ...dose, value }) }))] : [];
  return [...byLine, ...byDose].filter(Boolean);
}

function changed(request, at, change) {
  return JSON.parse(JSON.stringify({
    ...request, treatments: request.treatments.map((treatment, t) => t === at ? { ...treatment, ...change, ...(change.formula && { formulaId: undefined }) } : treatment),
  }));
}

function carries({ ingredient: id, nitriteFraction, nitrateFraction }, additive) {
  const declared = { nitrite: nitriteFraction, nitrate: nitrateFraction }[additive];
  return declared > 0 || (engine.ingredient(id)?.limitedAdditives ?? []).some(own => own.additive === additive);
}

function toWeigh({ lines }, { weighingStep }, additive) {
  return lines.filter(line => carries(line, additive))
    .map(line => say('limit.weigh', { name: names(line).name, weight: amount(line.toMix, line.step ?? weighingStep) })).join(' ');
}

function shown({ value, unit }) {
  return quantity({ value, unit: say(`unit.${unit}`) });
}
