// Quantities of an answer in words.
import { decimalsOf, showEstimate, showFixed, showNumber } from './numbers.js';

/** An amount to weigh: with the decimals of the weighing step. */
export function amount(quantity, step) {
  return `${showFixed(quantity.value, decimalsOf(step.value))} ${quantity.unit}`;
}

const larger = { g: { unit: 'kg', of: 1000, decimals: 3 }, oz: { unit: 'lb', of: 16, decimals: 2 } };

/** A weight of meat, in the larger unit where it makes one up. */
export function meat({ value, unit }) {
  const next = larger[unit];
  return next && value >= next.of ? `${showFixed(value / next.of, next.decimals)} ${next.unit}` : quantity({ value, unit });
}

/** A figure as it stands. */
export function quantity({ value, unit }) {
  return `${showNumber(value)} ${unit}`;
}

/** An uncertain figure. */
export function estimate(value, unit) {
  return `${showEstimate(value)} ${unit}`;
}
