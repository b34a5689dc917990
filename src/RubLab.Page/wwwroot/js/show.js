// Quantities of an answer in words.
import { decimalsOf, showEstimate, showFixed, showNumber } from './numbers.js';

/** An amount to weigh: with the decimals of the weighing step. */
export function amount(quantity, step) {
  return `${showFixed(quantity.value, decimalsOf(step.value))} ${quantity.unit}`;
}

/** A figure as it stands. */
export function quantity({ value, unit }) {
  return `${showNumber(value)} ${unit}`;
}

/** An uncertain figure. */
export function estimate(value, unit) {
  return `${showEstimate(value)} ${unit}`;
}
