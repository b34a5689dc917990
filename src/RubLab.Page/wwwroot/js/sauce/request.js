// From the form of a sauce to the body of POST /v1/sauces, and from a pointer in its errors back to the field.
import { Reading, withoutBlanks } from '../forms/reading.js';

export const blank = { formula: '', make: '', portions: '', by: 'left', reduce: '', portion: '', density: '', juices: '', juicesSalt: '' };

/**
 * @returns {{request?: object, faults: object[], portions?: number, juices?: {amount: object, salt?: object}}}
 * the request is of the card alone; how many portions and what goes into the pot beside it are for whoever asks again.
 */
export function readSauce(written, formulaId, settings) {
  const reading = new Reading(settings);
  const make = reading.amount('sauce-make', written.make, settings.bareUnit);
  const portions = reading.count('sauce-portions', written.portions);
  const reduce = reading.amount('sauce-reduce', written.reduce, '%');
  const portion = reading.amount('sauce-portion', written.portion, 'g');
  const density = reading.figure('sauce-density', written.density.replace(/g\s*\/\s*ml\s*$/i, ''));
  const juices = reading.amount('sauce-juices', written.juices, 'g');
  const salt = reading.estimate('sauce-juicesSalt', written.juicesSalt);
  if (portions !== undefined && !portion) {
    reading.faults.push({ field: 'sauce-portion', code: 'portion-missing', values: {} });
  }
  if (portions === 0) {
    reading.faults.push({ field: 'sauce-portions', code: 'portions-none', values: {} });
  }
  return {
    faults: reading.faults, portions: make ? undefined : portions, juices: juices && { amount: juices, salt },
    request: reading.faults.length === 0 && formulaId ? withoutBlanks({
      formulaId, make, reduce: reduce && { [written.by]: reduce }, portion, density: density === undefined ? undefined : { value: density, unit: 'g/mL' },
    }) : undefined,
  };
}

const own = { make: 'sauce-make', reduce: 'sauce-reduce', portion: 'sauce-portion', density: 'sauce-density' };

/** The field that an error of the API is about; the last line of a pot written out is the juices. */
export function fieldOf(pointer, lines) {
  const [, member, , index, part] = pointer.split('/');
  if (member === 'formula' && Number(index) === lines) {
    return part === 'salt' ? 'sauce-juicesSalt' : 'sauce-juices';
  }
  return own[member] ?? 'sauce-formula';
}
