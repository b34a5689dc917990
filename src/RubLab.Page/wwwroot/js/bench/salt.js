// The salt of each line of the pile: drawn, in figures, and its checks in words.
import { limitsOf, loadsOf } from '../cure/loads.js';
import { figureOf, make } from '../dom.js';
import { showEstimate } from '../words/numbers.js';
import { estimate, meat } from '../words/show.js';
import { say } from '../words/texts.js';
import { mendingOf } from './faults.js';
import { saltBar, sodiumBar } from './saltdrawing.js';

/**
 * @param {object} answer the sheet.
 * @param {object} read what it was computed from.
 * @param {(check: object, line: string) => object[]} mendings what could be changed so that a check comes out inside.
 * @param {Map<string, string>} cutNames names of the pile's lines by their id.
 */
export function saltOf(answer, read, mendings, cutNames) {
  return make('section', { class: 'salt' },
    make('h3', null, say('salt.title')),
    answer.salt.map(({ line, ledger }) => ledgerOf(ledger, {
      title: answer.salt.length > 1 ? cutNames.get(line) ?? line : null,
      treatments: answer.treatments,
      portion: read.request.portion,
      mendings: check => mendings(check, line),
    })));
}

function ledgerOf(ledger, { title, treatments, portion, mendings }) {
  const ranges = ledger.checks.filter(check => check.unit === 'g/kg');
  const daily = ledger.checks.filter(check => check.base === 'portion');
  const limits = limitsOf(ledger.checks);
  return make('section', { class: 'ledger' },
    title ? make('h4', null, title) : null,
    make('dl', { class: 'bands' },
      bandOf('salt.perKgGreen', ledger.saltPerKgGreen),
      bandOf('salt.perKgCooked', ledger.saltPerKgCooked),
      bandOf('salt.perPortion', ledger.sodiumPerPortion, portion && { portion: meat(portion) })),
    saltBar(ledger, treatments, ranges),
    ledger.sodiumPerPortion && daily.length > 0 ? sodiumBar(ledger.sodiumPerPortion, daily) : null,
    ranges.length > 0 ? make(title ? 'h5' : 'h4', null, say('salt.checks')) : null,
    ranges.length > 0 ? make('ul', { class: 'checks' }, ranges.map(check => checkOf(check, mendings(check)))) : null,
    limits.length > 0 ? make(title ? 'h5' : 'h4', null, say('load.title')) : null,
    limits.length > 0 ? loadsOf(limits, { heading: title ? 'h6' : 'h5' }) : null,
    daily.length > 0 ? make('details', null,
      make('summary', null, say('salt.day')),
      make('ul', { class: 'checks' }, daily.map(check => checkOf(check, [])))) : null);
}

function bandOf(key, band, values) {
  if (!band) {
    return null;
  }
  const spread = band.low === band.high ? null : say('salt.band', { low: showEstimate(band.low), high: estimate(band.high, band.unit) });
  return figureOf(say(values ? `${key}.of` : key, values), estimate(band.typical, band.unit), spread ? make('span', { class: 'band' }, ` ${spread}`) : null);
}

/** A check in words, with what would mend it. */
export function checkOf(check, mendings) {
  return make('li', { class: `check ${isOneLevel(check) ? 'level' : check.verdict}` },
    make('p', { class: 'title' }, check.title),
    make('p', { class: 'verdict' }, verdictOf(check)),
    check.advice ? make('p', null, check.advice) : null,
    mendings.length > 0 ? make('div', { class: 'mendings' }, mendings.map(mendingOf)) : null,
    make('p', { class: 'source' }, say('check.source', { ...check, confidence: say(`confidence.${check.confidence}`) })));
}

function verdictOf(check) {
  if (!check.measured) {
    return say('verdict.not-measured');
  }
  const { low, high } = check.measured;
  const measured = low === high ? estimate(low, check.unit) : say('range.between', { low: showEstimate(low), high: showEstimate(high), unit: check.unit });
  return say(`verdict.${isOneLevel(check) ? 'level.' : ''}${check.verdict}`, { range: rangeOf(check), measured });
}

// A landmark, which is told and not marked: nothing has to come out at it exactly.
const isOneLevel = ({ lowest, highest }) => lowest !== undefined && lowest === highest;

/** A check's range in words. */
export function rangeOf({ lowest, highest, unit }) {
  const values = { low: lowest === undefined ? '' : showEstimate(lowest), high: highest === undefined ? '' : showEstimate(highest), unit };
  if (lowest === undefined) {
    return say('range.to', values);
  }
  if (lowest === highest) {
    return estimate(lowest, unit);
  }
  return say(highest === undefined ? 'range.from' : 'range.between', values);
}
