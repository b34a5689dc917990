// The bench: what goes on and the pile on one side, the sheet that follows from them on the other.
import { Entry } from '../bench/entry.js';
import { inWords, showFaults } from '../bench/faults.js';
import { insteadOfRefused, refusalsOf } from '../bench/limits.js';
import { doseText, mendingsFor } from '../bench/mend.js';
import { draftOf } from '../bench/plan.js';
import { cautionsOf, findingsOf } from '../bench/remarks.js';
import { placeOf, readDraft } from '../bench/request.js';
import { saltOf } from '../bench/salt.js';
import { sheetOf, spokenSummary, totalsAtOnce } from '../bench/sheet.js';
import { kindOf } from '../bench/terms.js';
import { productOptions } from '../cure/products.js';
import { isRefusal } from '../cure/refusal.js';
import { button, byId, make } from '../dom.js';
import * as engine from '../engine.js';
import { newTreatment } from '../kept/draft.js';
import { offersOf } from '../weighout/offers.js';
import { boughtIn } from '../words/bought.js';
import { moment } from '../words/numbers.js';
import { say, sayCount } from '../words/texts.js';

const settleMs = 80;
const silenceMs = 900;

let app;
let entry;
let scheduled;
let speaking;
let latest = {};

/** Fills the section once. */
export async function open(section, shared) {
  app = shared;
  entry = new Entry(app, changed);
  app.saveAdjusted = saveAdjusted;
  app.sheet = currentSheet;
  app.putOn = putOn;
  app.takePlan = takePlan;
  const body = make('div', { id: 'sheet-body' }, make('p', null, say('app.starting')));
  section.classList.add('bench');
  section.append(entry.element, make('section', { id: 'sheet', class: 'sheet', 'aria-labelledby': 'sheet-title', tabindex: '-1' },
    make('h2', { id: 'sheet-title' }, say('sheet.title')),
    make('p', { id: 'spoken', class: 'unseen', role: 'status' }),
    make('div', { id: 'unfinished' }),
    body));
  entry.build();
  section.addEventListener('click', event => {
    if (event.target.id === 'at-once') {
      event.preventDefault();
      byId('sheet').scrollIntoView();
      byId('sheet').focus({ preventScroll: true });
    }
  });
  app.library.watch(() => {
    entry.offerFormulas();
    scheduleSheet();
  });
  app.own.watch(scheduleSheet);
  app.yields.watch(scheduleSheet);
  app.ready.then(() => {
    entry.offer(engine.cuts(), productOptions());
    showSheet();
  });
  return {
    show: () => {
      if (app.isReady) {
        entry.build();
        scheduleSheet();
      }
    },
    leave: () => app.notices.show('mended', ''),
  };
}

function changed(field) {
  scheduleSheet();
  if (field.startsWith('formula')) {
    entry.draft.treatments.forEach(treatment => treatment.formula && app.library.fetch(treatment.formula));
  }
}

function scheduleSheet() {
  clearTimeout(scheduled);
  scheduled = setTimeout(showSheet, settleMs);
}

/** What stands on the bench, computed: `{ read, formulas, authored, answer?, errors? }`. */
async function currentSheet() {
  const { draft } = entry;
  const formulas = {};
  for (const { formula } of draft.treatments) {
    const found = formula && await app.library.get(app.library.nowCalled(formula));
    if (found) {
      formulas[formula] = found;
    }
  }
  const read = readDraft(withKnown(draft), app.settings);
  const isComplete = draft.treatments.every(({ formula, adjusted }) => !formula || adjusted || formulas[formula]);
  const { ok, errors } = app.isReady && read.request && isComplete ? engine.computeSheet(read.request, formulas) : {};
  return { read, formulas, answer: ok, errors: errors ?? [] };
}

// A formula that is no longer listed is not computed with.
function withKnown(draft) {
  const { items } = app.library;
  const known = new Set(items.map(item => item.id));
  return { ...draft, treatments: draft.treatments.map(treatment => ({
    ...treatment, kind: kindOf(treatment, items), formula: known.has(treatment.formula) ? treatment.formula : '',
  })) };
}

async function showSheet() {
  const sheet = await currentSheet();
  latest = sheet;
  showFormulaStates(sheet.formulas);
  if (!app.isReady || !byId('sheet-body')) {
    return;
  }
  const { read, answer } = sheet;
  const refusals = refusalsOf(sheet.errors, { ...sheet, authored: authoredById(sheet.formulas) }, mending => mend(mending, read));
  const faults = read.faults.concat(refusals, sheet.errors.filter(error => !isRefusal(error)).map(error => ({ ...placeOf(error.pointer, read), detail: error.detail })));
  showFaults(entry.element, faults, takeChoice);
  byId('sheet-body').replaceChildren(...(answer ? whole(answer, read, sheet) : insteadOfRefused(sheet.errors, sheet, cutNames(read)) ?? instead(read, faults)));
  speak(faults.length > 0 ? inWords(faults[0]) : answer ? spokenSummary(answer, read) : '');
  byId('at-once').hidden = !answer;
  byId('at-once').textContent = answer ? totalsAtOnce(answer, read) : '';
  byId('unfinished').replaceChildren(...await offersOf(app));
}

function whole(answer, read, sheet) {
  const leftOut = new Set(read.faults.map(fault => `${fault.field}/${fault.line}`)).size;
  const context = { request: read.request, formulas: sheet.formulas, authored: authoredById(sheet.formulas), answer };
  return [
    leftOut > 0 ? make('p', { class: 'flag' }, sayCount('sheet.left-out', leftOut)) : null,
    make('div', { class: 'doings' },
      button(say('sheet.weighOut'), () => app.go('weigh-out', 'new'), { class: 'main', id: 'weigh-out' }),
      make('a', { class: 'plain', href: '#/paper' }, say('sheet.print'))),
    ...sheetOf(answer, read),
    saltOf(answer, read, (check, line) => mendingsFor(check, line, context).map(mending => ({ ...mending, apply: () => mend(mending, read) })), cutNames(read)),
    findingsOf(answer.findings),
    cautionsOf(answer.cautions),
  ].filter(Boolean);
}

function cutNames({ request }) {
  return new Map((request?.pile ?? []).map(line => [line.id, entry.cuts.find(cut => cut.id === line.cut)?.name]));
}

function authoredById(formulas) {
  return Object.fromEntries(Object.entries(formulas).map(([id, formula]) => [id, app.library.authored(formula)]));
}

function mend(mending, read) {
  const t = read.treatments[mending.treatment];
  const before = structuredClone(entry.draft.treatments[t]);
  entry.set(draft => Object.assign(draft.treatments[t], mending.formula ? { adjusted: mending.formula } : { dose: doseText(mending.dose) }));
  app.notices.offerBack('mended', say('mend.done', { change: mending.text }), () => entry.set(draft => { draft.treatments[t] = before; }, `formula-${t}`));
}

async function saveAdjusted(t) {
  const { formula, adjusted } = entry.draft.treatments[t];
  const { id } = await app.library.save(formula || null, adjusted, { base: latest.formulas[formula]?.revision, serial: app.library.editOf(formula)?.key });
  entry.set(draft => Object.assign(draft.treatments[t], { formula: id, adjusted: null }), `formula-${t}`);
}

// From another screen: a formula just written goes on the pile.
function putOn(id, replaced) {
  entry.set(draft => {
    const held = draft.treatments.find(treatment => treatment.formula === (replaced ?? id));
    if (held) {
      Object.assign(held, { formula: id, adjusted: null });
    } else {
      const free = draft.treatments.find(treatment => !treatment.formula && !treatment.adjusted);
      free ? Object.assign(free, { formula: id }) : draft.treatments.push({ ...newTreatment(), formula: id });
    }
  });
}

// From a purchase plan: pieces as bought, until trimmed weights take their place. What stood on the bench can be had back.
function takePlan(sheet) {
  const before = structuredClone(entry.draft);
  entry.set(draft => Object.assign(draft, draftOf(sheet, boughtIn(app.settings))));
  app.notices.offerBack('planned', say('plan.taken'), () => entry.set(draft => Object.assign(draft, before)));
}

function takeChoice(fault, choice) {
  const i = Number(fault.field.split('-')[1]);
  entry.set(draft => {
    const line = draft.lines[i];
    line.pile = line.pile.split(/\r\n|\r|\n/).map((row, at) => at + 1 === fault.line ? row.replace(fault.written, choice) : row).join('\n');
  }, `pile-${i}`);
}

function instead({ missing }, faults) {
  if (missing.length === 0) {
    return [faults.length > 0 ? make('p', { class: 'flag' }, say('sheet.mend')) : make('p', null, say('sheet.no-formula'))];
  }
  return [
    faults.length > 0 ? make('p', { class: 'flag' }, say('sheet.mend')) : null,
    make('p', null, say('sheet.empty')),
    make('ul', { class: 'missing' }, missing.map(field => make('li', null, say(`sheet.missing.${field}`)))),
  ].filter(Boolean);
}

function showFormulaStates(formulas) {
  entry.draft.treatments.forEach(({ formula }, t) => {
    const place = byId(`formula-${t}-state`);
    if (place) {
      place.textContent = t === 0 || formula ? stateInWords(formula, formulas[formula]) : '';
    }
  });
}

function stateInWords(id, stored) {
  const { items, fetchedAt, state, status } = app.library.list;
  const chosen = app.library.items.find(item => item.id === id);
  if (chosen && chosen.state !== 'kept') {
    return say(`formulas.state.${chosen.state}`);
  }
  if (chosen && !['asking', 'fresh'].includes(state) && stored?.revision !== chosen.revision) {
    return stored ? say('formulas.older', { revision: stored.revision }) : say('formulas.not-kept');
  }
  if (chosen && !stored) {
    return say('formulas.fetching');
  }
  if (state === 'refused') {
    return say('formulas.refused', { status });
  }
  if (state === 'offline') {
    const when = fetchedAt && moment(fetchedAt);
    return items.length > 0 ? say('formulas.offline', { when }) : say('formulas.offline-none');
  }
  if (app.library.items.length === 0) {
    return say(state === 'asking' ? 'formulas.asking' : 'formulas.none');
  }
  return id && !chosen ? say('formulas.gone') : '';
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
