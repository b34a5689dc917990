// Parts per million as the trade writes them: large ones in percent.
import { showNumber } from '../words/numbers.js';

const asPercent = 5000;

/** A share given in ppm. */
export function share(ppm) {
  const [value, unit] = ppm >= asPercent ? [ppm / 10000, '%'] : [ppm, 'ppm'];
  return `${showNumber(Number(value.toFixed(unit === '%' ? 2 : 3)))}\u00a0${unit}`;
}

/** The same as a band. */
export function shares({ low, high }) {
  return low === high ? share(high) : `${share(low)} – ${share(high)}`;
}
