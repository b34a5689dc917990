// The salt ledger in figures, and its checks in words.
import { make } from './dom.js';
import { showEstimate } from './numbers.js';
import { estimate } from './show.js';
import { say } from './texts.js';

/** The ledger of the first line of the pile, as an element. */
export function saltOf({ ledger }) {
  return make('section', { class: 'salt' },
    make('h3', null, say('salt.title')),
    make('dl', { class: 'bands' },
      bandOf('salt.perKgGreen', ledger.saltPerKgGreen),
      bandOf('salt.perKgCooked', ledger.saltPerKgCooked),
      bandOf('salt.perPortion', ledger.sodiumPerPortion)),
    ledger.checks.length > 0 ? make('h4', null, say('salt.checks')) : null,
    ledger.checks.length > 0 ? make('ul', { class: 'checks' }, ledger.checks.map(checkOf)) : null);
}

function bandOf(key, band) {
  if (!band) {
    return null;
  }
  const spread = band.low === band.high ? null : say('salt.band', { low: showEstimate(band.low), high: estimate(band.high, band.unit) });
  return make('div', null,
    make('dt', null, say(key)),
    make('dd', null, make('strong', { class: 'figure' }, estimate(band.typical, band.unit)), spread ? make('span', { class: 'band' }, ` ${spread}`) : null));
}

function checkOf(check) {
  return make('li', { class: `check ${check.verdict}` },
    make('p', { class: 'title' }, check.title),
    make('p', { class: 'verdict' }, verdictOf(check)),
    make('p', null, check.advice),
    make('p', { class: 'source' }, say('check.source', check)));
}

function verdictOf(check) {
  if (!check.measured) {
    return say('verdict.not-measured');
  }
  const { low, high } = check.measured;
  const measured = low === high ? estimate(low, check.unit) : say('range.between', { low: showEstimate(low), high: showEstimate(high), unit: check.unit });
  return say(`verdict.${check.verdict}`, { range: rangeOf(check), measured });
}

function rangeOf({ lowest, highest, unit }) {
  const values = { low: lowest === undefined ? '' : showEstimate(lowest), high: highest === undefined ? '' : showEstimate(highest), unit };
  if (lowest === undefined) {
    return say('range.to', values);
  }
  return say(highest === undefined ? 'range.from' : 'range.between', values);
}
