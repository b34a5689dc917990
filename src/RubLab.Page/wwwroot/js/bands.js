// A band drawn on a line, low to high with its typical figure marked. The same stands in words as its name.
import { draw } from './dom.js';
import { showEstimate } from './words/numbers.js';
import { estimate } from './words/show.js';
import { say } from './words/texts.js';

const width = 260;
const pad = 6;
const middle = 28;

/**
 * @param {{low: number, typical: number, high: number}} band
 * @param {{unit: string, min?: number, max: number, label: string}} scale `label` says what is measured; what lies beyond an end stands at it.
 * @returns {SVGElement}
 */
export function drawBand({ low, typical, high }, { unit, min = 0, max, label }) {
  const x = value => pad + Math.min(1, Math.max(0, (value - min) / (max - min))) * (width - 2 * pad);
  const name = low === high
    ? say('band.exact', { label, figure: estimate(typical, unit) })
    : say('band.between', { label, low: showEstimate(low), high: estimate(high, unit), typical: estimate(typical, unit) });
  const at = x(typical);
  return draw('svg', { class: 'band-line', viewBox: `0 0 ${width} 60`, role: 'img', 'aria-label': name },
    draw('line', { class: 'axis', x1: x(min), x2: x(max), y1: middle, y2: middle }),
    [min, max].map(end => draw('line', { class: 'axis', x1: x(end), x2: x(end), y1: middle - 5, y2: middle + 5 })),
    low === high ? null : draw('rect', { class: 'range', x: x(low), y: middle - 7, width: Math.max(2, x(high) - x(low)), height: 14 }),
    draw('line', { class: 'whisker', x1: at, x2: at, y1: middle - 11, y2: middle + 11 }),
    draw('text', { class: 'typical', x: at, y: 12, 'text-anchor': anchor(at) }, showEstimate(typical)),
    draw('text', { x: x(min), y: 54 }, showEstimate(min)),
    draw('text', { x: x(max), y: 54, 'text-anchor': 'end' }, estimate(max, unit)));
}

function anchor(x) {
  return x < 30 ? 'start' : x > width - 30 ? 'end' : 'middle';
}

/** The next of 1, 1.5, 2, 2.5, 4, 5, 7.5 times a power of ten that holds the value, so that fifths of it read well. */
export function niceEnd(value) {
  const power = 10 ** Math.floor(Math.log10(Math.max(value, 0.1)));
  return [1, 1.5, 2, 2.5, 4, 5, 7.5, 10].map(factor => factor * power).find(end => end >= value);
}
