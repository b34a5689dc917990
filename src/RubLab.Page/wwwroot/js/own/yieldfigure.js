// What a kitchen's own cooks come to, in words and drawn beside the book's figure.
import { drawBand } from '../bands.js';
import { make } from '../dom.js';
import { showEstimate, showNumber } from '../words/numbers.js';
import { band, ends, estimate } from '../words/show.js';
import { say, sayCount } from '../words/texts.js';

/** @param {object} figure one of the `yields` of an answer. */
export function yieldFigureOf(figure) {
  const { yield: own, reference } = figure;
  const drawn = (of, label) => make('figure', { class: 'pictured' }, make('figcaption', null, label), drawBand(of, { unit: '%', min: 0, max: 100, label }));
  return make('div', { class: 'yield' },
    make('p', { class: 'title' }, yieldTitle(figure)),
    make('p', null, make('strong', { class: 'figure' }, estimate(own.typical, '%')), own.low === own.high ? '' : ` ${say('own.yield.between', ends(own))}`),
    make('p', null, say(figure.spreadPercent === undefined ? 'own.yield.once' : 'own.yield.spread', {
      count: showNumber(figure.count), mean: estimate(figure.meanPercent, '%'), spread: showEstimate(figure.spreadPercent ?? 0),
    })),
    make('p', { class: 'hint' }, shareOf(figure)),
    drawn(own, say('own.yield.own')),
    reference ? drawn(reference, say('own.yield.book')) : null);
}

/** What cook and which weight a figure is of. */
export function yieldTitle({ method, weightIs }) {
  return say('own.yield.of', { method: methodInWords(method), base: say(`base.${weightIs}`) });
}

/** A figure in one line. */
export function yieldLine(figure) {
  return say('own.yield.line', { title: yieldTitle(figure), figure: estimate(figure.yield.typical, '%'), band: band(figure.yield), cooks: sayCount('own.cooks', figure.count) });
}

/** A way of cooking. */
export function methodInWords(method = '') {
  const key = `method.${method}`;
  const words = say(key);
  return words === key ? method : words;
}

// How far the figure is drawn to the book.
function shareOf({ ownSharePercent, reference }) {
  return reference === undefined ? say('own.yield.noBook')
    : ownSharePercent >= 100 ? say('own.yield.alone', { reference: band(reference) })
      : say('own.yield.drawn', { own: showEstimate(ownSharePercent), book: showEstimate(100 - ownSharePercent), reference: band(reference) });
}
