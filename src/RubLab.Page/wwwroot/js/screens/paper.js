// Paper: a batch sheet on one page per treatment, and a draft of what a jar's label must say.
import { button, headOf, make } from '../dom.js';
import { cut, ingredient } from '../engine.js';
import { allergensOf, allergensOnSheet, labelsToRead } from '../words/allergens.js';
import { locale } from '../words/numbers.js';
import { amount, band, meat, names, scaleOf, useOf, whither, writtenOf } from '../words/show.js';
import { say, sayCount } from '../words/texts.js';

let app;
let section;

export async function open(element, shared) {
  app = shared;
  section = element;
  return { show };
}

async function show() {
  await app.ready;
  const sheet = await app.sheet?.();
  if (!sheet?.answer) {
    section.replaceChildren(make('h2', null, say('screen.paper')), make('p', null, say('paper.none')), make('a', { class: 'plain', href: '#/bench' }, say('weighout.back')));
    return;
  }
  const { answer, read } = sheet;
  // What is pumped in or soaked in is made for its meat and never kept in a jar.
  const jarred = answer.treatments.filter(treatment => whither(treatment.kind) === 'on');
  section.replaceChildren(
    make('header', { class: 'unprinted' },
      make('h2', null, say('screen.paper')),
      make('p', { class: 'hint' }, sayCount('paper.pages', answer.treatments.length)),
      make('div', { class: 'doings' },
        button(say('paper.print'), () => printOnly('sheets'), { class: 'main' }),
        jarred.length > 0 ? button(say('paper.printLabels'), () => printOnly('labels'), { class: 'plain' }) : null)),
    ...answer.treatments.map((treatment, t) => pageOf(treatment, t, answer, read)),
    jarred.length > 0 ? make('section', { class: `labels ${app.settings.paper}` },
      make('h2', { class: 'unprinted' }, say('paper.labels')),
      jarred.map(labelOf)) : '');
}

function printOnly(what) {
  document.body.dataset.print = what;
  window.print();
}

function pageOf(treatment, t, answer, read) {
  const { request } = read;
  const step = request.weighingStep;
  const carried = allergensOnSheet(treatment);
  const many = treatment.pieces.length > 24 ? ' dense' : '';
  return make('article', { class: `page ${app.settings.paper}${many}` },
    make('header', null,
      make('h3', null, say('sheet.place', { place: t + 1, name: treatment.name })),
      make('p', null, [
        useOf(treatment),
        sayCount('sheet.pieces', treatment.pieces.length, { weight: meat(answer.greenWeight, scaleOf(read.pieces)) }),
        new Intl.DateTimeFormat(locale, { dateStyle: 'long' }).format(new Date()),
      ].join(' · ')),
      answer.status === 'planned' ? make('p', null, make('strong', null, say('sheet.planned'))) : null),
    make('table', { class: 'mix' },
      make('caption', null, say(`paper.mix.${whither(treatment.kind)}`, { toMix: amount(treatment.toMix, step), onMeat: amount(treatment.onMeat, step) })),
      headOf(['paper.tick', 'sheet.ingredient', 'sheet.amount', 'sheet.runningTotal', 'paper.spoons'].map(key => say(key))),
      make('tbody', null, treatment.lines.map(line => {
        const { name, form } = names(line);
        return make('tr', null, make('td', { class: 'box' }), make('th', { scope: 'row' }, name, form ? make('small', null, form) : null),
          make('td', { class: 'figure' }, amount(line.toMix, line.step ?? step)), make('td', null, amount(line.runningTotal, step)), make('td', null, line.spoon?.text ?? ''));
      }))),
    treatment.boilDownTo ? make('p', null, make('strong', null, say('sheet.boilDown', { weight: meat(treatment.boilDownTo) }))) : null,
    carried ? make('p', null, make('strong', null, carried)) : null,
    ...onPieces(treatment, read, step),
    make('footer', null,
      make('p', null, saltLine(answer, request)),
      answer.cautions.map(caution => make('p', null, caution.text))));
}

function onPieces({ kind, pieces }, read, step) {
  if (whither(kind) === 'around') {
    return [make('p', null, say('sheet.together'))];
  }
  const scale = piece => read.pieces[piece.number - 1].scale;
  const isPurchase = new Set(read.request.pile.filter(line => line.weightIs === 'purchase').map(line => line.id));
  const ofPiece = piece => [writtenOf(piece, read), isPurchase.has(piece.line) && say('sheet.piece.green', { weight: meat(piece.greenWeight, scale(piece)) })].filter(Boolean).join(', ');
  return [
    make('h4', null, say(`sheet.each.${whither(kind)}`)),
    make('ol', { class: 'on-pieces' }, pieces.map(piece => make('li', null,
      make('span', { class: 'box' }), make('span', null, `${piece.number}`), make('strong', null, amount(piece.amount, step)),
      make('small', null, ofPiece(piece), piece.targetWeight ? ` ${say('sheet.piece.until', { weight: meat(piece.targetWeight, scale(piece)) })}` : '')))),
  ];
}

function saltLine({ salt }, { pile }) {
  return salt.map(({ line, ledger }) => say('paper.salt', { line: salt.length > 1 ? `${cut(pile.find(other => other.id === line).cut).name}: ` : '', band: band(ledger.saltPerKgGreen) })).join(' ');
}

function labelOf(treatment) {
  const merged = new Map();
  for (const line of treatment.lines) {
    merged.set(line.ingredient, (merged.get(line.ingredient) ?? 0) + line.toMix.value);
  }
  const known = [...merged].sort((a, b) => b[1] - a[1]).map(([id]) => ingredient(id));
  const unread = labelsToRead(treatment);
  return make('article', { class: 'label' },
    make('h3', null, treatment.name),
    make('p', null, make('strong', null, say('label.ingredients')), ' ', known.map(item => item.name).join(', '), '.'),
    make('p', null, make('strong', null, say('label.allergens')), ' ', allergensOf(treatment) || say(unread ? 'label.noneKnown' : 'label.noneListed'), '.'),
    unread ? make('p', null, make('strong', null, unread)) : null,
    make('p', null, say('label.net', { weight: amount(treatment.toMix) })),
    make('p', { class: 'draft' }, say('label.draft')));
}
