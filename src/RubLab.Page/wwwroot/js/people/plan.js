// What to buy for the guests, in words, figures and bands.
import { findingsOf } from '../bench/remarks.js';
import { button, make } from '../dom.js';
import { bandIn, portionIn, weightIn, weightsIn } from '../words/bought.js';
import { showNumber } from '../words/numbers.js';
import { say, sayCount } from '../words/texts.js';
import { countBand, drawn } from './drawn.js';
import { costInWords, money } from './money.js';

/**
 * @param {object} answer of a purchase plan.
 * @param {(id: string) => string} cutName
 * @param {string} unit the kitchen's, kg or lb.
 * @param {(sheet: object) => void} onTake called when the plan is to go to the bench.
 */
export function planOf(answer, cutName, unit, onTake) {
  return [
    make('p', null, say('people.for', { guests: showNumber(answer.guests), portion: portionIn(answer.portion, unit) })),
    make('ul', { class: 'buys' }, answer.lines.map(line => lineOf(line, cutName, unit))),
    make('p', { class: 'title' }, say('people.total', { weight: weightIn(answer.purchaseWeight, unit) })),
    drawn(say('people.fed'), say('people.fed.words', { fed: countBand(answer.fed) }), answer.fed, say('people.unit.guests')),
    answer.cost ? make('p', { id: 'people-cost' }, say('people.cost', { total: money(answer.cost.total), each: costInWords(answer.cost, unit, 'edible') })) : null,
    answer.batchSheet
      ? button(say('people.toBench'), () => onTake(answer.batchSheet), { class: 'main', id: 'people-take' })
      : make('p', { class: 'hint' }, say('people.noFormula')),
    findingsOf(answer.findings),
  ].filter(Boolean);
}

function lineOf(line, cutName, unit) {
  const pieces = line.pieces?.typical;
  const weight = weightIn(line.purchaseWeight, unit);
  return make('li', null,
    make('h3', null, cutName(line.cut)),
    make('p', { class: 'result' }, make('strong', { class: 'figure' }, pieces === undefined ? weight : sayCount('people.pieces', pieces))),
    pieces === undefined ? null : make('p', null, say('people.pieces.weight', { weight, each: weightsIn(line.pieceWeight, unit) })),
    pieces === undefined ? null : drawn(say('people.pieces.label'), piecesInWords(line.pieces), line.pieces, say('people.unit.pieces')),
    drawn(say('people.portions'), say('people.feeds', { portions: countBand(line.portions) }), line.portions, say('people.unit.portions')),
    leftOver(line, unit),
    line.cost ? make('p', null, say('people.cost', { total: money(line.cost.total), each: costInWords(line.cost, unit, 'edible') })) : null);
}

function piecesInWords(pieces) {
  return pieces.low === pieces.high ? '' : say('people.pieces.band', { band: countBand(pieces) });
}

function leftOver({ leftOver: left, shortfall: short }, unit) {
  const isShort = short.high > 0;
  const words = say(isShort ? 'people.leftOrShort' : 'people.left', { left: weightsIn(left, unit), short: weightsIn(short, unit) });
  const [over, under] = [bandIn(left, unit), bandIn(short, unit)];
  const [low, typical, high] = [over.low - under.high, over.typical - under.typical, over.high - under.low].map(value => Number(value.toFixed(1)));
  return drawn(say(isShort ? 'people.leftOrShort.label' : 'people.left.label'), words, { low, typical, high }, unit);
}
