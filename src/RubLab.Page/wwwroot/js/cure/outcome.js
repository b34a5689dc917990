// What follows from a cure: what to weigh, its loads against the legal levels, its salt.
import { cautionsOf, findingsOf } from '../bench/remarks.js';
import { checksOf } from '../checks.js';
import { figureOf, headOf, make } from '../dom.js';
import { showNumber } from '../words/numbers.js';
import { amount, band, meat, names, quantity, scaleOf } from '../words/show.js';
import { say, sayCount } from '../words/texts.js';
import { sumOf } from '../words/weights.js';
import { limitsOf, loadsOf } from './loads.js';

const mostPieces = 60;
// What is said at the table already, or at the head of the screen.
const ofWeighing = ['cure-step-too-coarse', 'premix', 'no-premix'];

/** Within every level. */
export function outcomeOf(answer, { written, pieces }) {
  const findings = answer.findings.filter(finding => !ofWeighing.includes(finding.code));
  return [
    weighingOf(answer, pieces),
    answer.pieces && written.method === 'injection' ? targetsOf(answer.pieces, pieces) : null,
    levelsOf(answer.checks),
    saltOf(answer),
    ...checksOf(answer.checks),
    findingsOf(findings),
    cautionsOf(answer.cautions.filter(caution => !caution.id.startsWith('cure-'))),
  ].filter(Boolean);
}

/** Above one: nothing to weigh, but by how much and what would mend it. */
export function refusedOf(answer, more) {
  return [make('p', { class: 'flag', id: 'cure-refused' }, say('cure.refused')), answer ? levelsOf(answer.checks, more) : null].filter(Boolean);
}

function weighingOf({ lines, toMix, onMeat, findings }, pieces) {
  return make('section', { class: 'weighing', 'aria-labelledby': 'cure-weigh' },
    make('h3', { id: 'cure-weigh' }, say('sheet.weigh')),
    make('p', null, say('cure.for', { weight: meat(sumOf(pieces), scaleOf(pieces)) })),
    toMix ? make('p', null, say('cure.made', { toMix: meat(toMix), onMeat: meat(onMeat) })) : null,
    make('table', null,
      headOf(['sheet.ingredient', 'sheet.amount', 'cure.perKg'].map(key => say(key))),
      make('tbody', null, lines.map(line => make('tr', null,
        make('th', { scope: 'row' }, names(line).name, make('small', null, [names(line).form, line.isSolved && say('brine.solved')].filter(Boolean).join(', '))),
        make('td', null, make('strong', { class: 'figure' }, amount(line.weighed)), errorOf(line)),
        make('td', null, quantity({ ...line.ratio, value: Number(line.ratio.value.toPrecision(4)) })))))),
    make('p', { class: 'hint' }, say('cure.roundedDown')),
    aboutWeighing(findings).map(finding => make('p', { class: 'flag', 'data-finding': finding.code }, finding.message)));
}

// An ingredient, and all of the cure where that is no more than the ingredient: said once.
function aboutWeighing(findings) {
  const said = ofWeighing.flatMap(code => findings.filter(finding => finding.code === code));
  return said.filter((finding, i) => !said.slice(i + 1).some(other => other.code === finding.code && other.parameters.amount === finding.parameters.amount));
}

function errorOf({ errorPercent }) {
  const percent = Number((errorPercent ?? 0).toFixed(2));
  return percent === 0 ? null : make('small', null, say('cure.error', { percent: showNumber(percent) }));
}

function targetsOf(answered, pieces) {
  return make('section', { class: 'pieces', 'aria-labelledby': 'cure-pieces' },
    make('h3', { id: 'cure-pieces' }, say('cure.pieces')),
    make('ol', null, answered.slice(0, mostPieces).map(piece => make('li', null,
      make('span', { class: 'number' }, say('sheet.piece', { number: piece.number })), ' ',
      make('strong', { class: 'figure' }, meat(piece.targetWeight, pieces[piece.number - 1].scale)), ' ',
      make('span', { class: 'of' }, pieces[piece.number - 1].written)))),
    answered.length > mostPieces ? make('p', { class: 'hint' }, sayCount('cure.morePieces', answered.length - mostPieces)) : null);
}

function levelsOf(checks, more) {
  const limits = limitsOf(checks);
  return limits.length === 0 ? null : make('section', { class: 'salt', id: 'cure-levels', 'aria-labelledby': 'cure-levels-title' },
    make('h3', { id: 'cure-levels-title' }, say('load.title')),
    loadsOf(limits, more));
}

function saltOf({ saltPerKgGreen, sodiumPerKgGreen }) {
  return make('section', { 'aria-labelledby': 'cure-salt' },
    make('h3', { id: 'cure-salt' }, say('cure.salt')),
    make('dl', { class: 'bands' },
      figureOf(say('salt.perKgGreen'), band(saltPerKgGreen)),
      sodiumPerKgGreen ? figureOf(say('cure.sodium'), band(sodiumPerKgGreen)) : null));
}
