// Starts the page: the form, the formulas, the engine, and the sheet that follows from them.
import { byId, make } from './dom.js';
import * as engine from './engine.js';
import { inWords, showFaults } from './faults.js';
import { Form } from './form.js';
import { Formulas } from './formulas.js';
import { keptFormula } from './kitchen.js';
import { showFixed } from './numbers.js';
import { keepOffline } from './offline.js';
import { cautionsOf, findingsOf } from './remarks.js';
import { placeOf, readDraft } from './request.js';
import { saltOf } from './salt.js';
import { sheetOf, spokenSummary, totalsInWords } from './sheet.js';
import { fillTexts, say, sayCount } from './texts.js';

const settleMs = 80;
const silenceMs = 900;

const form = new Form(changed);
const formulas = new Formulas(form, scheduleSheet);
let isReady = false;
let scheduled;
let speaking;

fillTexts(document);
byId('pile-hint').textContent = say('form.pile.hint', { decimal: showFixed(12.4, 1), short: showFixed(5.2, 1), each: showFixed(3.6, 1) });
byId('sheet-body').replaceChildren(make('p', null, say('app.starting')));
form.fill();
formulas.start();
await startEngine();
await keepOffline(offerNewVersion);

async function startEngine() {
  try {
    const version = await engine.start();
    byId('edition').textContent = say('app.data', { version });
    form.offerCuts(engine.cuts());
    isReady = true;
    await showSheet();
  } catch (fault) {
    console.error(fault);
    byId('sheet-body').replaceChildren(make('p', { class: 'flag' }, say('app.failed')));
  }
}

function changed(field) {
  scheduleSheet();
  if (field === 'formula') {
    formulas.fetchChosen();
  }
}

function scheduleSheet() {
  clearTimeout(scheduled);
  scheduled = setTimeout(showSheet, settleMs);
}

async function showSheet() {
  const chosen = formulas.chosen;
  const stored = chosen && await keptFormula(chosen.id);
  formulas.showState(stored);
  if (!isReady) {
    return;
  }
  const read = readDraft({ ...form.draft, formula: chosen?.id ?? '' });
  const answer = read.request && stored ? engine.computeSheet(read.request, { [chosen.id]: stored }) : {};
  const faults = read.faults.concat((answer.errors ?? []).map(
    error => ({ ...placeOf(error.pointer, read.pieces), detail: error.detail })));
  showFaults(faults);
  byId('sheet-body').replaceChildren(...(answer.ok ? whole(answer.ok, read) : instead(read, faults)));
  speak(faults.length > 0 ? inWords(faults[0]) : answer.ok ? spokenSummary(answer.ok, read) : '');
  showAtOnce(answer.ok, read);
}

function whole(answer, read) {
  const leftOut = new Set(read.faults.map(fault => fault.line)).size;
  return [
    leftOut > 0 ? make('p', { class: 'flag' }, sayCount('sheet.left-out', leftOut)) : null,
    ...sheetOf(answer, read),
    saltOf(answer.salt[0]),
    findingsOf(answer.findings),
    cautionsOf(answer.cautions),
  ].filter(Boolean);
}

function instead(read, faults) {
  if (faults.length > 0) {
    return [make('p', { class: 'flag' }, say('sheet.mend'))];
  }
  return read.missing.length === 0 ? [make('p', null, say('sheet.no-formula'))] : [
    make('p', null, say('sheet.empty')),
    make('ul', { class: 'missing' }, read.missing.map(field => make('li', null, say(`sheet.missing.${field}`)))),
  ];
}

// On a narrow screen the sheet begins below the form: its totals stay in sight.
function showAtOnce(answer, read) {
  byId('at-once').hidden = !answer;
  byId('at-once').textContent = answer ? totalsInWords(answer, read) : '';
}

// Said once the cook has stopped writing, not at every key.
function speak(sentence) {
  clearTimeout(speaking);
  speaking = setTimeout(() => {
    if (byId('spoken').textContent !== sentence) {
      byId('spoken').textContent = sentence;
    }
  }, silenceMs);
}

function offerNewVersion(take) {
  const button = make('button', { type: 'button' }, say('app.take-new-version'));
  button.addEventListener('click', take);
  byId('notices').replaceChildren(make('p', null, say('app.new-version')), button);
}
