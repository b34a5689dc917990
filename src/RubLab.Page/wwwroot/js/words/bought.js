// Weights of meat in the unit the kitchen buys it in.
import { showFixed } from './numbers.js';

const gramsOf = { g: 1, kg: 1000, oz: 28.349523125, lb: 453.59237 };
const space = '\u00a0';

/** The unit meat is bought in. */
export function boughtIn(settings) {
  return ['lb', 'oz'].includes(settings.bareUnit) ? 'lb' : 'kg';
}

/** A band in another unit. */
export function bandIn({ low, typical, high, unit }, wanted) {
  const [a, b, c] = [low, typical, high].map(value => value * gramsOf[unit] / gramsOf[wanted]);
  return { low: a, typical: b, high: c, unit: wanted };
}

/** A weight of meat, with the digits a butcher's scale and its yield leave it. */
export function weightIn({ value, unit }, wanted) {
  const figure = value * gramsOf[unit] / gramsOf[wanted];
  return `${shown(figure, decimals(figure))}${space}${wanted}`;
}

/** A weight with the digits of a kitchen's scale, which shows kilograms, pounds, or pounds and ounces. */
export function scaledIn({ value, unit }, wanted) {
  if (wanted === 'lb-oz') {
    const ounces = Number((value * gramsOf[unit] / gramsOf.oz).toFixed(1));
    return `${showFixed(Math.floor(ounces / 16), 0)}${space}lb${space}${showFixed(ounces % 16, 1)}${space}oz`;
  }
  return `${showFixed(value * gramsOf[unit] / gramsOf[wanted], wanted === 'lb' ? 2 : 3)}${space}${wanted}`;
}

/** The two ends of a weight. */
export function weightsIn(band, wanted) {
  const { low, high } = bandIn(band, wanted);
  const digits = decimals(high);
  const [from, to] = [low, high].map(value => shown(value, digits));
  return from === to ? `${to}${space}${wanted}` : `${from} – ${to}${space}${wanted}`;
}

/** A portion: in grams, or in ounces where meat is bought in pounds. */
export function portionIn({ value, unit }, wanted) {
  return wanted === 'lb' ? `${showFixed(value * gramsOf[unit] / gramsOf.oz, 1)}${space}oz` : `${showFixed(value * gramsOf[unit], 0)}${space}g`;
}

/** What a price for a kilogram is for one of another unit. */
export function priceIn(amount, wanted) {
  return amount * gramsOf[wanted] / gramsOf.kg;
}

function decimals(figure) {
  return figure < 1 ? 2 : 1;
}

function shown(figure, digits) {
  return Number(figure.toFixed(digits)) === 0 ? '0' : showFixed(figure, digits);
}
