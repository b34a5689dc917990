// A load above a legal level, said beside the field it comes from.
import { showEstimate } from '../words/numbers.js';
import { additivesOf, nameOf } from './additives.js';
import { share } from './share.js';

/** Whether an error of the API is one. */
export const isRefusal = ({ code }) => code === 'limit-exceeded';

/** Whether nothing else stands against what was asked. */
export const isRefused = errors => errors.length > 0 && errors.every(isRefusal);

/** By how many grams a check's level is exceeded; nothing where it is not. */
export function overGramsOf(errors) {
  const over = new Map(errors.map(({ parameters }) => [parameters.limit, parameters.overGrams]));
  return ({ id }) => over.get(id);
}

/**
 * Each level once, beside every row of a form that brings some of what is too much.
 * @param {object[]} written all rows.
 * @param {number[]} asked which of them were asked about.
 */
export function refusalsOf(errors, screen, written, asked) {
  const levels = [...new Map(errors.map(({ parameters }) => [parameters.limit, parameters])).values()];
  return levels.flatMap(parameters => asked
    .filter(i => additivesOf(written[i].ingredient).includes(parameters.additive))
    .map(i => refusal(`${screen}-amount-${i}`, parameters)));
}

/**
 * @param {string} field
 * @param {object} parameters of the API's error.
 * @param {object} [more] members of the fault beside these.
 */
export function refusal(field, { title, additive, ppm, highest, over, overGrams }, more) {
  return {
    field, code: 'limit-exceeded',
    values: { title, ppm: share(hundredths(ppm)), highest: share(highest), over: share(hundredths(over)), grams: showEstimate(overGrams), what: nameOf(additive).toLowerCase() },
    ...more,
  };
}

// As answers have it; the least excess is still one.
function hundredths(ppm) {
  return Math.max(0.01, Number(ppm.toFixed(2)));
}
