// What a formula comes to: beside its card, and two of them beside each other.
import { figureOf, headOf, make } from '../dom.js';
import { band, estimate, lineAmount, names } from '../words/show.js';
import { say } from '../words/texts.js';

/** The whole in three figures. */
export function wholeOf(answer) {
  const salt = answer.saltShare;
  return make('dl', { class: 'bands whole' },
    figureOf(say('formula.total'), totalOf(answer)),
    figureOf(say('formula.saltShare'), band(salt)),
    answer.bulkDensity ? figureOf(say('formula.bulk'), band(answer.bulkDensity)) : null);
}

/** What one line comes to: grams per base, and its share. */
export function lineInWords({ ratio, share }) {
  return say('formula.line', { ratio: band(ratio), share: band(share) });
}

/**
 * Two formulas side by side, line by line.
 * @param {{title: string, answer: object}[]} two
 */
export function beside(two) {
  const keys = [...new Set(two.flatMap(({ answer }) => answer.lines.map(keyOf)))];
  const row = (name, cells) => make('tr', null, make('th', { scope: 'row' }, name), cells.map(cell => make('td', null, cell)));
  return make('table', { class: 'compare' },
    headOf([say('formula.comparison'), ...two.map(({ title }) => title)]),
    make('tbody', null,
      row(say('formula.total'), two.map(({ answer }) => totalOf(answer))),
      row(say('formula.saltShare'), two.map(({ answer }) => band(answer.saltShare))),
      keys.map(key => row(nameOf(key), two.map(({ answer }) => {
        const line = answer.lines.find(other => keyOf(other) === key);
        return line ? [`${band(line.ratio)}`, make('small', null, line.amount ? lineAmount(line.amount) : say('formula.rest'))] : '–';
      })))));
}

/** All of it per base, as far as it is known. */
export function totalOf({ totalRatio }) {
  return estimate(totalRatio.value, totalRatio.unit);
}

function keyOf(line) {
  return `${line.ingredient}/${line.form ?? ''}`;
}

function nameOf(key) {
  const [ingredient, form] = key.split('/');
  const known = names({ ingredient, form });
  return known.form ? [known.name, make('small', null, known.form)] : known.name;
}
