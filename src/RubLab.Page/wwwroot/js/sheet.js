// The batch sheet: what goes on each piece, and what to weigh.
import { make } from './dom.js';
import { ingredient } from './engine.js';
import { amount, meat, quantity } from './show.js';
import { say, sayCount } from './texts.js';

/** The one sentence a screen reader says when the sheet changes. */
export function spokenSummary(answer, read) {
  return `${summaryOf(answer)}. ${totalsInWords(answer, read)}.`;
}

/** What goes on the meat and what to mix, in one line. */
export function totalsInWords({ treatments: [treatment] }, { request }) {
  return say('sheet.totals', {
    onMeat: amount(treatment.onMeat, request.weighingStep),
    toMix: amount(treatment.toMix, request.weighingStep),
  });
}

/** The sheet of one treatment, as elements. */
export function sheetOf(answer, { request, pieces }) {
  const treatment = answer.treatments[0];
  return [
    make('header', { class: 'treatment' },
      make('h3', null, treatment.name),
      make('p', null, say('sheet.of', {
        kind: say(`kind.${treatment.kind}`),
        dose: quantity(treatment.dose),
        base: say(`base.${treatment.base}`),
      })),
      make('p', null, summaryOf(answer)),
      answer.status === 'planned' ? make('p', { class: 'flag' }, say('sheet.planned')) : null),
    piecesOf(treatment, request, pieces),
    weighingOf(treatment, request.weighingStep),
  ];
}

function summaryOf(answer) {
  return sayCount('sheet.pieces', answer.treatments[0].pieces.length, { weight: meat(answer.greenWeight) });
}

function piecesOf(treatment, request, pieces) {
  const isPurchase = request.pile[0].weightIs === 'purchase';
  return make('section', { class: 'pieces' },
    make('h4', null, say('sheet.each')),
    make('ol', null, treatment.pieces.map(piece => make('li', null,
      make('span', { class: 'number' }, say('sheet.piece', { number: piece.number })),
      ' ',
      make('strong', { class: 'figure' }, amount(piece.amount, request.weighingStep)),
      ' ',
      make('span', { class: 'of' }, pieces[piece.number - 1].written),
      isPurchase ? make('span', { class: 'of' }, say('sheet.piece.green', { weight: meat(piece.greenWeight) })) : null))));
}

function weighingOf(treatment, step) {
  return make('section', { class: 'weighing' },
    make('h4', null, say('sheet.weigh')),
    make('dl', { class: 'totals' },
      make('div', null, make('dt', null, say('sheet.toMix')), make('dd', { id: 'to-mix' }, amount(treatment.toMix, step))),
      make('div', null, make('dt', null, say('sheet.onMeat')), make('dd', { id: 'on-meat' }, amount(treatment.onMeat, step)))),
    make('table', null,
      make('thead', null, make('tr', null,
        make('th', { scope: 'col' }, say('sheet.ingredient')),
        make('th', { scope: 'col' }, say('sheet.amount')),
        make('th', { scope: 'col' }, say('sheet.runningTotal')))),
      make('tbody', null, treatment.lines.map(line => make('tr', null,
        make('th', { scope: 'row' },
          ...namesOf(line),
          line.spoon ? make('small', null, line.spoon.text) : null),
        make('td', { class: 'figure' }, amount(line.toMix, step)),
        make('td', null, amount(line.runningTotal, step)))))));
}

function namesOf(line) {
  const known = ingredient(line.ingredient);
  const form = known?.forms.find(candidate => candidate.id === line.form)?.name;
  return [known?.name ?? line.ingredient, form ? make('small', { class: 'form' }, form) : null];
}
