// The batch sheet: what to weigh, and what goes on each piece.
import { button, headOf, make } from '../dom.js';
import { allergensOnSheet } from '../words/allergens.js';
import { amount, meat, names, scaleOf, useOf, whither, writtenOf } from '../words/show.js';
import { say, sayCount } from '../words/texts.js';

/** The one sentence a screen reader says when the sheet changes. */
export function spokenSummary(answer, read) {
  return `${summaryOf(answer, read)}. ${totalsInWords(answer, read)}.`;
}

/** What goes on the meat and what to mix, in one line; of several treatments each by its name. */
function totalsInWords({ treatments }, { request: { weighingStep } }) {
  const totals = ({ kind, onMeat, toMix }) => say('sheet.totals', {
    gone: say(`sheet.total.${whither(kind)}`, { amount: amount(onMeat, weighingStep) }), toMix: amount(toMix, weighingStep),
  });
  return treatments.length === 1
    ? totals(treatments[0])
    : treatments.map(treatment => say('sheet.totals.of', { name: treatment.name, totals: totals(treatment) })).join('; ');
}

/** The same for a glance; of many treatments only what they come to together. */
export function totalsAtOnce({ treatments }, read) {
  const { weighingStep } = read.request;
  const { unit } = treatments[0].toMix;
  const toMix = treatments.reduce((sum, treatment) => sum + treatment.toMix.value, 0);
  return treatments.length <= 2
    ? totalsInWords({ treatments }, read)
    : say('sheet.totals.many', { count: treatments.length, toMix: amount({ value: Number(toMix.toPrecision(12)), unit }, weighingStep) });
}

/** The sheet of each treatment, as elements. */
export function sheetOf(answer, read) {
  return [
    make('header', { class: 'summary' },
      make('p', null, summaryOf(answer, read)),
      answer.status === 'planned' ? make('p', { class: 'flag' }, say('sheet.planned')) : null),
    ...answer.treatments.map((treatment, t) => treatmentOf(treatment, t, answer, read)),
  ];
}

function treatmentOf(treatment, t, answer, read) {
  return make('article', { class: 'treatment', 'aria-labelledby': `treatment-${t}` },
    make('header', null,
      make('h3', { id: `treatment-${t}` }, answer.treatments.length > 1 ? say('sheet.place', { place: t + 1, name: treatment.name }) : treatment.name),
      make('p', { class: 'hint' }, useOf(treatment)),
      ['dry-brine', 'soak'].includes(treatment.kind) ? make('a', { class: 'plain', href: `#/time/${t}` }, say('sheet.howFar')) : null),
    weighingOf(treatment, t, read.request.weighingStep),
    piecesOf(treatment, read));
}

function summaryOf(answer, { pieces }) {
  return sayCount('sheet.pieces', pieces.length, { weight: meat(answer.greenWeight, scaleOf(pieces)) });
}

function weighingOf(treatment, t, step) {
  const carried = allergensOnSheet(treatment);
  return make('section', { class: 'weighing' },
    make('h4', null, say('sheet.weigh')),
    make('dl', { class: 'totals' },
      make('div', null, make('dt', null, say('sheet.toMix')), make('dd', { id: `to-mix-${t}` }, amount(treatment.toMix, step))),
      make('div', null, make('dt', null, say(`sheet.goes.${whither(treatment.kind)}`)), make('dd', { id: `on-meat-${t}` }, amount(treatment.onMeat, step)))),
    make('table', null,
      headOf(['sheet.ingredient', 'sheet.amount', 'sheet.runningTotal'].map(key => say(key))),
      make('tbody', null, treatment.lines.map(line => make('tr', null,
        make('th', { scope: 'row' },
          ...namesOf(line),
          line.spoon ? make('small', { class: 'spoon' }, line.spoon.text) : null),
        make('td', { class: 'figure' }, amount(line.toMix, line.step ?? step)),
        make('td', null, amount(line.runningTotal, step)))))),
    treatment.bowls ? bowlsOf(treatment, step) : null,
    carried ? make('p', { class: 'flag' }, carried) : null,
    treatment.boilDownTo ? make('p', { class: 'flag' }, say('sheet.boilDown', { weight: meat(treatment.boilDownTo) })) : null);
}

function bowlsOf(treatment, step) {
  return make('p', { class: 'flag' }, sayCount('sheet.bowls', treatment.bowls.length, {
    each: treatment.bowls.map(bowl => amount(bowl.toMix, step)).join(', '),
  }));
}

const mostShown = 60;

function piecesOf(treatment, read) {
  const { request, pieces } = read;
  const scale = piece => pieces[piece.number - 1].scale;
  if (whither(treatment.kind) === 'around') {
    return make('p', { class: 'hint' }, say('sheet.together'));
  }
  const linesOf = new Map(request.pile.map(line => [line.id, line]));
  const list = all => make('ol', null, all.map(piece => make('li', null,
    make('span', { class: 'number' }, say('sheet.piece', { number: piece.number })),
    ' ',
    make('strong', { class: 'figure' }, amount(piece.amount, request.weighingStep)),
    ' ',
    make('span', { class: 'of' }, writtenOf(piece, read)),
    piece.targetWeight ? make('span', { class: 'of target' }, say('sheet.piece.until', { weight: meat(piece.targetWeight, scale(piece)) })) : null,
    linesOf.get(piece.line)?.weightIs === 'purchase' ? make('span', { class: 'of' }, say('sheet.piece.green', { weight: meat(piece.greenWeight, scale(piece)) })) : null)));
  const shown = treatment.pieces.slice(0, mostShown);
  const section = make('section', { class: 'pieces' }, make('h4', null, say(`sheet.each.${whither(treatment.kind)}`)), list(shown));
  if (treatment.pieces.length > mostShown) {
    const rest = treatment.pieces.length - mostShown;
    section.append(button(sayCount('sheet.morePieces', rest), () => section.replaceChildren(section.firstChild, list(treatment.pieces)), { class: 'plain' }));
  }
  return section;
}

function namesOf(line) {
  const { name, form } = names(line);
  return [name, form ? make('small', { class: 'form' }, form) : null];
}
