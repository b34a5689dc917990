// One load on the scale of its legal level. What it shows stands in words beside it, so it is one image to a screen reader.
import { draw, make } from '../dom.js';
import { say } from '../words/texts.js';
import { share } from './share.js';

const pad = 12;
const top = 22;
const bar = 26;
const room = 1.25;

/** @param {object} check with what is measured. */
export function loadBar({ title, measured, lowest, highest, base }) {
  const width = Math.min(520, Math.max(280, window.innerWidth - 60));
  const level = highest ?? lowest;
  const most = Math.max(measured.high, level) * room || 1;
  const x = value => pad + (value / most) * (width - 2 * pad);
  const typical = x(measured.typical);
  // What could be left in the finished product at most is no load: nothing of it is over.
  const isUnsure = base === 'finished';
  const beyond = !isUnsure && measured.typical > (highest ?? Infinity);
  const isLevel = lowest !== undefined;
  return make('figure', { class: 'drawing load' },
    draw('svg', { viewBox: `0 0 ${width} ${top + bar + 14}`, role: 'img', 'aria-label': say('load.drawing', { title, measured: share(measured.high), level: share(level) }) },
      highest === undefined ? null : draw('rect', { class: 'barred', x: x(highest), y: top, width: x(most) - x(highest), height: bar }),
      isLevel && lowest > 0 ? draw('rect', { class: 'short', x: x(0), y: top, width: x(lowest) - x(0), height: bar }) : null,
      draw('rect', { class: `loaded${isUnsure ? ' unsure' : ''}`, x: x(0), y: top + 5, width: Math.max(1, (beyond ? x(highest) : typical) - x(0)), height: bar - 10 }),
      beyond ? draw('rect', { class: 'over', x: x(highest), y: top + 5, width: Math.max(1, typical - x(highest)), height: bar - 10 }) : null,
      whisker(x(measured.low), x(measured.high)),
      draw('line', { class: 'axis', x1: x(0), x2: x(most), y1: top + bar, y2: top + bar }),
      [lowest, highest].filter((value, i, ends) => value !== undefined && ends.indexOf(value) === i).flatMap(value => [
        draw('line', { class: 'level', x1: x(value), x2: x(value), y1: top - 4, y2: top + bar + 8 }),
        draw('text', { x: x(value), y: top - 8, 'text-anchor': x(value) > width * 0.7 ? 'end' : x(value) < width * 0.3 ? 'start' : 'middle' }, share(value)),
      ])));
}

function whisker(low, high) {
  const y = top + bar / 2;
  return high - low < 1 ? null : [
    draw('line', { class: 'whisker', x1: low, x2: high, y1: y, y2: y }),
    [low, high].map(end => draw('line', { class: 'whisker', x1: end, x2: end, y1: y - 8, y2: y + 8 })),
  ].flat();
}
