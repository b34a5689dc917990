// The answer to what is written, put or mixed in or pumped, in one shape.
import * as engine from '../engine.js';
import { withTargets } from './liquid.js';
import { isRefused } from './refusal.js';
import { fieldOf, isLiquid, readCure } from './request.js';

/**
 * @param {object} written the form.
 * @param {import('../kept/settings.js').Settings} settings
 * @param {string} [purpose] sheet, or check for what may not be weighed.
 * @returns {{read: object, answer?: object, faults: object[], isRefused: boolean}} `isRefused` where nothing but a legal level stands against it.
 */
export function askFor(written, settings, purpose = 'sheet') {
  const read = readCure(written, settings);
  if (!read.request) {
    return { read, faults: read.faults, isRefused: false };
  }
  const { ok, errors = [] } = isLiquid(written) ? pickle(read, purpose) : engine.computeCure({ ...read.request, purpose });
  const refused = isRefused(errors);
  return {
    read, isRefused: refused, errors,
    faults: refused ? [] : errors.map(error => error.field ? error : faultOf(error, fieldOf(error.pointer, read))),
    answer: ok && (isLiquid(written) ? ofSheet(ok, read) : ofCure(ok)),
  };
}

function faultOf({ code, detail }, field) {
  return code === 'required' && field.startsWith('cure-amount-') ? { field, code: 'cure-amount-missing', values: {} } : { field, detail };
}

function pickle(read, purpose) {
  const { request, errors, unreached } = withTargets(read.request, read.targets);
  if (unreached !== undefined) {
    return { errors: [{ field: `cure-amount-${read.rows[read.targets[unreached].line]}`, code: 'target-unreached', values: {} }] };
  }
  return request ? engine.computeSheet({ ...request, purpose }, {}) : { errors };
}

function ofCure({ lines, checks, saltPerKgGreen, sodiumPerKgGreen, findings, cautions }) {
  return { lines, checks, saltPerKgGreen, sodiumPerKgGreen, findings, cautions };
}

function ofSheet({ treatments: [treatment], salt: [{ ledger }], findings, cautions }, { targets }) {
  return {
    lines: (treatment?.lines ?? []).map((line, i) => ({
      ingredient: line.ingredient, form: line.form, ratio: line.ratio, weighed: line.toMix, isSolved: targets.some(target => target.line === i),
    })),
    checks: ledger.checks, saltPerKgGreen: ledger.saltPerKgGreen, findings, cautions,
    toMix: treatment?.toMix, onMeat: treatment?.onMeat, pieces: treatment?.pieces,
  };
}
