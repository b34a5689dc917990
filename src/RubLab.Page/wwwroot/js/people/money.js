// Sums of money and what they come to for one of each.
import { priceIn } from '../words/bought.js';
import { locale } from '../words/numbers.js';
import { say } from '../words/texts.js';

/** A sum of money. */
export function money({ amount, currency }) {
  return new Intl.NumberFormat(locale, { style: 'currency', currency }).format(amount);
}

/**
 * A cost for one portion, one piece and one kilogram or pound, as far as it is known.
 * @param {object} cost as the API gives it.
 * @param {string} unit the kitchen's, kg or lb.
 * @param {'edible' | 'bought'} of which meat the weight is.
 */
export function costInWords({ perPortion, perPiece, perKilogram }, unit, of) {
  return [
    perPortion && say('people.cost.portion', { sum: money(perPortion) }),
    perPiece && say('people.cost.piece', { sum: money(perPiece) }),
    perKilogram && say(`people.cost.${of}`, { sum: money({ ...perKilogram, amount: priceIn(perKilogram.amount, unit) }), unit }),
  ].filter(Boolean).join(', ');
}
