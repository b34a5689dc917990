// Loads of limited additives against their legal levels, drawn and in words.
import { mendingOf } from '../bench/faults.js';
import { make } from '../dom.js';
import { asPotassiumNitrite } from '../engine.js';
import { showEstimate, showNumber } from '../words/numbers.js';
import { sourceOf } from '../words/show.js';
import { say } from '../words/texts.js';
import { nameOf } from './additives.js';
import { loadBar } from './loaddrawing.js';
import { share, shares } from './share.js';

/** The checks that are of legal levels. */
export const limitsOf = checks => checks.filter(check => check.additive !== undefined);

/**
 * @param {object[]} checks those of legal levels.
 * @param {{heading?: string, overGrams?: (check: object) => number | undefined, mendings?: (check: object) => {text: string, change: string, apply: () => void}[]}} [more]
 * `heading` is the element of an additive's name.
 */
export function loadsOf(checks, { heading = 'h4', overGrams = () => undefined, mendings = () => [] } = {}) {
  const additives = [...new Set(checks.map(check => check.additive))];
  return make('div', { class: 'loads' }, additives.map(additive => {
    const own = checks.filter(check => check.additive === additive).toSorted((a, b) => isOver(b) - isOver(a));
    return make('section', { class: 'additive', 'data-additive': additive },
      make(heading, null, nameOf(additive)),
      additive === 'nitrite' ? potassium(own) : null,
      make('ul', { class: 'checks' }, own.map(check => loadOf(check, overGrams(check), mendings(check)))));
  }));
}

/** One load against one level. */
function loadOf(check, grams, mendings) {
  return make('li', { class: `check ${isOver(check) ? 'above' : check.verdict}`, 'data-limit': check.id },
    make('p', { class: 'title' }, check.title),
    check.measured ? loadBar(check) : null,
    make('p', { class: 'verdict' }, verdictOf(check), grams === undefined ? null : ` ${say('load.overGrams', { grams: showEstimate(grams), what: nameOf(check.additive).toLowerCase() })}`),
    check.advice && check.verdict !== 'within' ? make('p', null, check.advice) : null,
    mendings.length > 0 ? make('div', { class: 'mendings' }, mendings.map(mendingOf)) : null,
    make('p', { class: 'source' }, sourceOf(check)));
}

// A band that begins below a level and ends above it is refused as well.
function isOver({ verdict, highest, measured, base }) {
  return verdict === 'above' || (verdict === 'cannot-tell' && base !== 'finished' && measured?.high > highest);
}

function verdictOf({ verdict, measured, lowest, highest, base }) {
  const values = {
    base: say(`base.${base}`), measured: measured ? shares(measured) : '', most: measured ? share(measured.high) : '', lowest: lowest === undefined ? '' : share(lowest), highest: highest === undefined ? '' : share(highest),
    over: measured && highest !== undefined && measured.high > highest ? share(Number((measured.high - highest).toPrecision(6))) : '',
  };
  const kind = lowest === undefined ? 'cap' : highest === undefined ? 'least' : lowest === highest ? 'level' : 'range';
  return say(`load.${kind}.${measured ? verdict : 'unknown'}`, values);
}

// The rules print each level as a pair; by their own weight the two salts are not alike.
function potassium(checks) {
  const put = checks.find(check => check.base === 'green-ingoing' && check.measured)?.measured.high;
  return put > 0 ? make('p', { class: 'hint' }, say('load.potassium', { sodium: share(put), potassium: `${showNumber(Math.floor(asPotassiumNitrite(put) * 10 + 1e-6) / 10)}\u00a0ppm` })) : null;
}
