// An uncertain figure in words, and drawn below them.
import { drawBand, niceEnd } from '../bands.js';
import { make } from '../dom.js';
import { showNumber } from '../words/numbers.js';

/**
 * @param {string} label what is measured.
 * @param {string} words the same in words.
 * @param {{low: number, typical: number, high: number}} band nothing is drawn of one whose ends are one.
 * @param {string} unit
 */
export function drawn(label, words, band, unit) {
  const max = niceEnd(Math.max(band.high, -band.low));
  return make('div', { class: 'pictured' },
    make('p', null, words),
    band.low === band.high ? null : drawBand(band, { unit, min: band.low < 0 ? -max : 0, max, label }));
}

/** A count that is not known exactly. */
export function countBand({ low, high }) {
  return low === high ? showNumber(low) : `${showNumber(low)} – ${showNumber(high)}`;
}
