// The ledger as a drawing: what each treatment brings, the band of the whole, and the ranges it is held against.
// Every figure in it stands in words beside it, so it is one image to a screen reader.
import { niceEnd } from '../bands.js';
import { draw, make } from '../dom.js';
import { sodiumOfADay } from '../engine.js';
import { showEstimate } from '../words/numbers.js';
import { estimate, quantity } from '../words/show.js';
import { say } from '../words/texts.js';
import { rangeOf } from './salt.js';

// Drawn about as wide as it is shown, so that its figures stay as large as the text around it.
const widthNow = () => Math.min(640, Math.max(280, window.innerWidth - 40));
let width = 640;
const pad = 12;
const barHeight = 34;
const rangeHeight = 30;

/** Salt per kilogram green, stacked by treatment, over the ranges that stand on green weight. */
export function saltBar(ledger, treatments, checks) {
  width = widthNow();
  const shown = checks.filter(check => check.measured && check.base === 'green');
  const { saltPerKgGreen: total } = ledger;
  const most = niceEnd(Math.max(total.high, ...shown.map(check => check.highest ?? check.lowest)));
  const x = value => pad + (value / most) * (width - 2 * pad);
  const parts = treatments.map((treatment, t) => ({
    name: treatment.name,
    grams: ledger.entries.filter(entry => entry.treatment === t).reduce((sum, entry) => sum + entry.salt.typical, 0),
  })).filter(part => part.grams > 0);
  let from = 0;
  const pieces = parts.map((part, i) => {
    const start = from;
    from += part.grams;
    return draw('rect', { class: `part part-${i % 4}`, x: x(start), y: 8, width: Math.max(1, x(from) - x(start)), height: barHeight });
  });
  const top = barHeight + 20;
  const ranges = shown.map((check, i) => rangeMark(check, x, most, top + i * rangeHeight));
  const height = top + shown.length * rangeHeight + 34;
    const captions = parts.map(part => say('salt.part', { name: part.name, grams: estimate(part.grams, 'g/kg') }));
  return make('figure', { class: 'drawing' },
    draw('svg', { viewBox: `0 0 ${width} ${height}`, role: 'img', 'aria-label': say('salt.drawing') },
      pieces,
      whisker(x(total.low), x(total.high), 8 + barHeight / 2),
      ranges,
      axis(x, most, height - 22, 'g/kg')),
    make('figcaption', null,
      make('ul', { class: 'legend' }, captions.map((text, i) => make('li', { class: `part-${i % 4}` }, text))),
      shown.length > 0 ? make('ul', { class: 'legend ranges' }, shown.map(check => make('li', { class: 'range' },
        say('salt.range', { title: check.title, range: rangeOf(check), confidence: say(`confidence.${check.confidence}`) })))) : null));
}

/** Sodium of a portion on the scale of a day. */
export function sodiumBar(band, daily) {
  width = widthNow();
  const day = daily.find(check => check.lowest !== undefined) ?? daily[0];
  const whole = sodiumOfADay(day.id);
  const most = niceEnd(Math.max(whole, band.high));
  const x = value => pad + (value / most) * (width - 2 * pad);
  const marks = [day.lowest, day.highest, 100].filter(percent => percent !== undefined);
  return make('figure', { class: 'drawing' },
    draw('svg', { viewBox: `0 0 ${width} 80`, role: 'img', 'aria-label': say('salt.drawing.sodium') },
      draw('rect', { class: 'day', x: x(0), y: 8, width: x(whole) - x(0), height: barHeight }),
      draw('rect', { class: 'part part-0', x: x(0), y: 8, width: Math.max(1, x(band.typical) - x(0)), height: barHeight }),
      whisker(x(band.low), x(band.high), 8 + barHeight / 2),
      [...new Set(marks)].flatMap(percent => [
        draw('line', { class: 'mark', x1: x(whole * percent / 100), x2: x(whole * percent / 100), y1: 2, y2: barHeight + 20 }),
        draw('text', { x: x(whole * percent / 100), y: barHeight + 38, 'text-anchor': anchor(x(whole * percent / 100)) }, `${showEstimate(percent)} %`),
      ])),
    make('figcaption', { class: 'hint' }, say('salt.portionOfDay', {
      sodium: estimate(band.typical, 'mg'), percent: showEstimate(day.measured.typical), high: showEstimate(day.measured.high),
      day: quantity({ value: whole, unit: 'mg' }),
    })));
}

function rangeMark(check, x, most, y) {
  const low = check.lowest ?? 0;
  const high = check.highest ?? most;
  const isLow = check.confidence === 'low' || check.confidence === 'very-low';
  return draw('rect', { class: `range${isLow ? ' unsure' : ''}`, x: x(low) - (low === high ? 2 : 0), y, width: Math.max(4, x(high) - x(low)), height: rangeHeight - 12 });
}

function whisker(low, high, y) {
  return high - low < 1 ? null : [
    draw('line', { class: 'whisker', x1: low, x2: high, y1: y, y2: y }),
    [low, high].map(end => draw('line', { class: 'whisker', x1: end, x2: end, y1: y - 10, y2: y + 10 })),
  ].flat();
}

function axis(x, most, y, unit) {
  const step = most / 5;
  return [
    draw('line', { class: 'axis', x1: x(0), x2: x(most), y1: y, y2: y }),
    draw('text', { x: x(most), y: y - 5, 'text-anchor': 'end' }, unit),
    Array.from({ length: 6 }, (_, i) => i * step).flatMap(value => [
      draw('line', { class: 'axis', x1: x(value), x2: x(value), y1: y, y2: y + 5 }),
      draw('text', { x: x(value), y: y + 21, 'text-anchor': anchor(x(value)) }, showEstimate(value)),
    ]),
  ].flat();
}

function anchor(x) {
  return x < pad + 4 ? 'start' : x > width - 32 ? 'end' : 'middle';
}
