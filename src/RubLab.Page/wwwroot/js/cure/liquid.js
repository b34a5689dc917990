// A pickle whose lines are to bring the meat to a level: found by asking the computation, which counts what goes in as the law does.
import * as engine from '../engine.js';
import { isRefusal } from './refusal.js';
import { seek } from './seek.js';

const rounds = 4;
const perMillion = { ppm: 1, 'g/kg': 1e3, '%': 1e4 };

/**
 * @param {object} request the batch sheet; the lines of the targets have no amount.
 * @param {{line: number, additive: string, reached: object}[]} targets
 * @returns {{request?: object, errors?: object[], unreached?: number}} the request with every amount; `unreached` is a target that no amount comes to.
 */
export function withTargets(request, targets) {
  if (targets.length === 0) {
    return { request };
  }
  const unit = unitOf(request.treatments[0].formula.lines);
  let amounts = targets.map(() => 1);
  for (let round = 0; round < rounds; round++) {
    const before = amounts;
    for (const [k, { additive, reached }] of targets.entries()) {
      const at = (value, purpose) => engine.computeSheet({ ...put(request, targets, amounts.with(k, value), unit), purpose, pieces: 'none' }, {});
      const { errors } = at(amounts[k], 'check');
      if (errors) {
        return { errors };
      }
      const found = seek(
        amounts[k], reached.value * perMillion[reached.unit],
        value => { const { ok } = at(value, 'check'); return ok && ingoing(ok, additive); },
        // A target above a level is refused whatever the last digit; one at a level must not pass it.
        value => isWithin(at(value, 'sheet'), additive) || !isWithin(at(value * 0.99, 'sheet'), additive));
      if (found === undefined) {
        return { unreached: k };
      }
      amounts = amounts.with(k, found);
    }
    if (amounts.every((amount, k) => amount === before[k])) {
      break;
    }
  }
  return { request: put(request, targets, amounts, unit) };
}

/** What goes in of an additive, ppm, as the strictest of its levels counts it. */
function ingoing({ salt }, additive) {
  const counted = salt[0].ledger.checks.filter(check => check.additive === additive && check.base === 'green-ingoing' && check.measured);
  return Math.max(0, ...counted.map(check => check.measured.high));
}

function isWithin({ errors = [] }, additive) {
  return !errors.some(error => isRefusal(error) && error.parameters.additive === additive);
}

// As the other lines are written; where none has an amount yet, in shares.
function unitOf(lines) {
  const units = lines.map(line => line.amount?.unit).filter(Boolean);
  return units.find(unit => unit.startsWith('%-of')) ?? (units.length > 0 ? 'g' : '%-of-liquid');
}

function put(request, targets, amounts, unit) {
  const [treatment] = request.treatments;
  const lines = treatment.formula.lines.map((line, i) => {
    const k = targets.findIndex(target => target.line === i);
    return k < 0 ? line : { ...line, amount: { value: amounts[k], unit } };
  });
  return { ...request, treatments: [{ ...treatment, formula: { ...treatment.formula, lines } }] };
}
