// What the pack of a cure declares, as it is written beside its line.
import { declaredOf } from './additives.js';

/**
 * @param {object} row with what is written for `nitrite` and `nitrate`.
 * @param {(additive: string) => string} fieldOf the id of its field.
 * @param {import('../forms/reading.js').Reading} reading
 * @returns {object} the members of a line that say it; a fault where the pack was not read.
 */
export function declared(row, fieldOf, reading) {
  return Object.fromEntries(declaredOf(row.ingredient).map(({ additive, isRequired }) => {
    if (isRequired && row[additive].trim() === '') {
      reading.faults.push({ field: fieldOf(additive), code: 'content-missing', values: {} });
    }
    return [`${additive}Fraction`, reading.content(fieldOf(additive), row[additive])];
  }));
}
