// What follows from a liquid: its strength, what to weigh, what a piece weighs with it in, what it leaves in the meat.
import { drawBand, niceEnd } from '../bands.js';
import { cautionsOf, findingsOf } from '../bench/remarks.js';
import { checksOf } from '../checks.js';
import { additivesOf, isCure } from '../cure/additives.js';
import { limitsOf, loadsOf } from '../cure/loads.js';
import { figureOf, headOf, make } from '../dom.js';
import * as engine from '../engine.js';
import { bandIn } from '../words/bought.js';
import { showEstimate, showNumber } from '../words/numbers.js';
import { amount, band, estimate, meat, names, quantity, scaleOf } from '../words/show.js';
import { say, sayCount } from '../words/texts.js';
import { sumOf } from '../words/weights.js';

const mostPieces = 60;

/**
 * @param {object} answer of POST /v1/brines.
 * @param {{request: object, pieces: object[]}} read what it was asked with.
 */
export function outcomeOf(answer, { request, pieces }) {
  return [
    strengthOf(answer),
    weighingOf(answer, pieces),
    answer.targetPieceWeight ? targetOf(answer, request, pieces) : null,
    reachedOf(answer),
    answer.soak ? soakOf(answer.soak) : null,
    levelsOf(answer.checks),
    ...checksOf(answer.checks),
    findingsOf(answer.findings),
    cautionsOf(answer.cautions),
  ].filter(Boolean);
}

/** Above a legal level: nothing to weigh, but by how much. */
export function refusedOf(answer, overGrams) {
  return [make('p', { class: 'flag', id: 'brine-refused' }, say('cure.refused')), answer ? levelsOf(answer.checks, { overGrams }) : null].filter(Boolean);
}

function strengthOf({ strength, saturatedPercent, temperature }) {
  return make('section', { 'aria-labelledby': 'brine-strength' },
    make('h3', { id: 'brine-strength' }, say('brine.strength')),
    make('p', { class: 'result' }, make('strong', { class: 'figure' }, estimate(strength.percent, '%'))),
    make('p', null, say('brine.strength.also', {
      salometer: showEstimate(strength.salometer), baume: showEstimate(strength.baume), gravity: showNumber(strength.specificGravity), temperature: degrees(strength.atTemperature),
    })),
    drawBand({ low: strength.percent, typical: strength.percent, high: strength.percent }, { unit: '%', max: Number(saturatedPercent.toPrecision(3)), label: say('brine.strength') }),
    make('p', { class: 'hint' }, say('brine.saturated', { saturated: estimate(saturatedPercent, '%'), temperature: degrees(temperature) })));
}

function weighingOf({ lines, made, needed, dissolvingOrder }, pieces) {
  const step = { value: made.mass.value < 1000 ? 0.1 : 1, unit: 'g' };
  const perBatch = made.batches > 1;
  return make('section', { class: 'weighing', 'aria-labelledby': 'brine-weigh' },
    make('h3', { id: 'brine-weigh' }, say('sheet.weigh')),
    make('p', null, say('cure.for', { weight: meat(sumOf(pieces), scaleOf(pieces)) })),
    make('p', null, say('brine.made', { mass: meat(tidy(made.mass)), volume: litres(made.volume) }), perBatch ? ` ${sayCount('brine.batches', made.batches, { each: meat(tidy(made.batch.mass)) })}` : ''),
    Math.abs(needed.mass.value - made.mass.value) > 0.05 ? make('p', { class: 'hint' }, say('brine.needed', { needed: meat(tidy(needed.mass)), volume: litres(needed.volume) })) : null,
    make('table', null,
      headOf(['sheet.ingredient', 'sheet.amount', 'brine.share'].map(key => say(key))),
      make('tbody', null, lines.map(line => make('tr', null,
        make('th', { scope: 'row' }, names(line).name, make('small', null, [names(line).form, line.isSolved && say('brine.solved')].filter(Boolean).join(', '))),
        make('td', { class: 'figure' }, amount(rounded(line, perBatch ? line.batch : line.made, step), step)),
        make('td', null, estimate(line.share.value, line.share.unit)))))),
    dissolvingOrder.length > 1 ? make('p', { class: 'hint' }, say('brine.order', { order: dissolvingOrder.map(id => names({ ingredient: id }).name).join(', ') })) : null,
    lines.some(({ ingredient }) => isCure(ingredient)) ? make('p', { class: 'flag' }, say('brine.cured'), ' ', make('a', { href: '#/cure' }, say('brine.cured.go'))) : null);
}

// The scale's last figure, not the computation's; of what has a legal level never more than is due.
function rounded({ ingredient }, { value, unit }, step) {
  const steps = value / step.value;
  return { value: (additivesOf(ingredient).length > 0 ? Math.floor(steps * (1 + 1e-12)) : Math.round(steps)) * step.value, unit };
}

function targetOf(answer, { weighedBack }, written) {
  return make('section', { class: answer.pieces ? 'pieces' : null, 'aria-labelledby': 'brine-target-weight' },
    make('h3', { id: 'brine-target-weight' }, say(written.length > 1 ? 'cure.pieces' : 'brine.targetWeight')),
    ...(answer.pieces ? eachOf(answer.pieces, written) : [
      make('p', { class: 'result' }, make('strong', { class: 'figure' }, whole(answer.targetPieceWeight, written[0].scale))),
      make('p', null, say('brine.drainedWeight', { band: meatBand(answer.drainedPieceWeight, written[0].scale) })),
    ]),
    make('p', null, say('brine.addedSolution', { added: band(answer.addedSolution.afterDraining), putIn: estimate(answer.addedSolution.putIn.value, '%') })),
    weighedBack ? make('p', { class: 'flag', id: 'brine-by-scale' }, say('brine.byScale', { pump: estimate(answer.dose.value, answer.dose.unit), retained: band(answer.retained) })) : null,
    answer.retained.low < answer.retained.high ? drawn(answer.retained, 'brine.retained.drawn', 100) : null);
}

function eachOf(answered, written) {
  return [
    make('ol', null, answered.slice(0, mostPieces).map(piece => make('li', null,
      make('span', { class: 'number' }, say('sheet.piece', { number: piece.number })), ' ',
      make('strong', { class: 'figure' }, whole(piece.targetWeight, written[piece.number - 1].scale)), ' ',
      make('span', { class: 'of' }, written[piece.number - 1].written),
      make('span', { class: 'of' }, say('brine.piece.drained', { band: meatBand(piece.drainedWeight, written[piece.number - 1].scale) }))))),
    answered.length > mostPieces ? make('p', { class: 'hint' }, sayCount('cure.morePieces', answered.length - mostPieces)) : null,
  ];
}

function whole({ value, unit }, scale) {
  return meat({ value: Math.round(value), unit }, scale);
}

function reachedOf({ salt, reached }) {
  return make('section', { 'aria-labelledby': 'brine-reached' },
    make('h3', { id: 'brine-reached' }, say('brine.reached')),
    make('dl', { class: 'bands' },
      salt.perKgGreen ? figure(say('salt.perKgGreen'), salt.perKgGreen) : null,
      salt.perKgInjected ? figure(say('brine.perKgInjected'), salt.perKgInjected) : null,
      reached.filter(item => item.perKgGreen && !isSalt(item.ingredient))
        .map(item => figure(say('brine.reached.of', { name: names({ ingredient: item.ingredient }).name }), item.perKgGreen))));
}

// Salt counts once, whichever lines brought it.
function isSalt(id) {
  return engine.allIngredients().find(item => item.id === id)?.group === 'salt';
}

function soakOf(soak) {
  return make('section', { 'aria-labelledby': 'brine-soak' },
    make('h3', { id: 'brine-soak' }, say('brine.soak')),
    make('dl', { class: 'bands' },
      figure(say('brine.evenness'), soak.evenness, 100),
      figure(say('brine.takenUp'), soak.takenUp, 100),
      figure(say('brine.evenPerKg'), soak.evenPerKgGreen),
      figure(say('brine.evenStrength'), { low: soak.evenStrengthPercent, typical: soak.evenStrengthPercent, high: soak.evenStrengthPercent, unit: '%' }),
      soak.leastLiquid ? figure(say('brine.leastLiquid'), soak.leastLiquid) : null));
}

function levelsOf(checks, more) {
  const limits = limitsOf(checks);
  return limits.length === 0 ? null : make('section', { class: 'salt', 'aria-labelledby': 'brine-levels' }, make('h3', { id: 'brine-levels' }, say('load.title')), loadsOf(limits, more));
}

// A figure, drawn where it is a band.
function figure(title, of, max) {
  return figureOf(title, band(of), of.low < of.high ? drawBand(of, { unit: of.unit, max: max ?? niceEnd(of.high), label: title }) : null);
}

function drawn(of, key, max) {
  return make('div', null, make('p', { class: 'hint' }, say(key)), drawBand(of, { unit: of.unit, max, label: say(key) }));
}

function meatBand(weight, scale) {
  return band(bandIn(weight, scale !== 'kg' ? 'lb' : weight.high >= 1000 ? 'kg' : 'g'));
}

function litres({ value, unit }) {
  return unit === 'mL' && value >= 1000 ? estimate(value / 1000, 'L') : estimate(value, unit);
}

function tidy({ value, unit }) {
  return { value: value < 1000 ? Number(value.toFixed(1)) : Math.round(value), unit };
}

function degrees({ value, unit }) {
  return quantity({ value, unit: `°${unit}` });
}
