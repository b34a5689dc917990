// One formula: written, adjusted, compared, kept as a revision.
import { showFaults } from '../bench/faults.js';
import { button, byId, fillSelect, make } from '../dom.js';
import * as engine from '../engine.js';
import { formOptions } from '../forms/choices.js';
import { cardOf } from '../formula/card.js';
import * as cards from '../formula/cards.js';
import { beside, lineInWords, totalOf, wholeOf } from '../formula/figures.js';
import { addLine, fieldOf, readCard, sound as soundCard, written } from '../formula/model.js';
import { showNumber } from '../words/numbers.js';
import { band } from '../words/show.js';
import { say } from '../words/texts.js';

let app;
let section;
let card;
let id = null;
let stored;
let based = {};
let hold = 'salt';
let other = '';
let before = null;
let isSaving = false;

export async function open(element, shared) {
  app = shared;
  section = element;
  section.addEventListener('focusin', event => {
    if (/^amount-/.test(event.target.name ?? '')) {
      before = sound();
    }
  });
  section.addEventListener('input', event => take(event.target));
  return { show };
}

async function show(which) {
  await app.ready;
  const wanted = which === 'new' || which === '' ? null : app.library.nowCalled(which);
  id = wanted;
  await readStored();
  const kept = cards.of(id);
  ({ card, based } = kept ? { ...kept, card: soundCard(kept.card) } : { card: written(stored), based: standing() });
  build();
}

// What a card was begun on: saved on anything newer, both versions must be kept.
function standing() {
  return { base: stored?.revision, serial: id ? app.library.editOf(id)?.key : undefined };
}

async function readStored() {
  let found = id && await app.library.get(id);
  if (id && !found) {
    await app.library.fetch(id);
    found = await app.library.get(id);
  }
  stored = found && { ...app.library.authored(found), revision: found.revision };
}

function build() {
  section.replaceChildren(
    make('h2', null, id ? say('formula.title') : say('formula.title.new')),
    make('p', { id: 'card-state', class: 'hint' }, stateInWords()),
    make('div', { class: 'workbench' },
      cardOf(card, { onAdd: add, onDrop: drop }),
      make('div', { class: 'outcome' },
        holdChoice(),
        make('div', { id: 'changed', class: 'hint', role: 'status' }),
        make('div', { id: 'whole' }),
        make('div', { class: 'doings' },
          button(id ? say('formula.save') : say('formula.save.new'), () => save(id), { class: 'main', id: 'save' }),
          id ? button(say('formula.saveAs'), () => save(null), { class: 'plain' }) : null,
          id ? button(say('formula.startOver'), startOver, { class: 'plain' }) : null),
        make('p', { id: 'saved', role: 'status' }),
        make('div', { id: 'remarks' }),
        comparison())),
    make('p', { id: 'card-at-once', class: 'at-once', 'aria-hidden': 'true' }));
  section.querySelector('form').addEventListener('submit', event => event.preventDefault());
  update();
}

function stateInWords() {
  const edit = id && app.library.editOf(id);
  return edit ? say(`formulas.state.${edit.state}`) : stored ? say('formula.revision', { revision: stored.revision }) : id ? say('formulas.not-kept') : '';
}

function holdChoice() {
  return make('fieldset', { class: 'field' },
    make('legend', null, say('formula.hold')),
    ['salt', 'dose'].map(value => {
      const radio = make('input', { type: 'radio', name: 'hold', value });
      radio.checked = hold === value;
      return make('label', { class: 'choice' }, radio, make('span', null, say(`formula.hold.${value}`)));
    }));
}

function comparison() {
  const select = make('select', { id: 'compare', name: 'compare' });
  const options = [{ value: '', text: say('formula.compare.none') }, stored && { value: 'stored', text: say('formula.compare.stored') },
    ...app.library.items.filter(item => item.id !== id).map(item => ({ value: item.id, text: item.name }))].filter(Boolean);
  fillSelect(select, options, other);
  return make('section', null,
    make('div', { class: 'field' }, make('label', { for: 'compare' }, say('formula.compare')), select),
    make('div', { id: 'beside' }));
}

function take({ name, value }) {
  const [member, index] = name.split('-');
  if (name === 'hold') {
    hold = value;
  } else if (name === 'compare') {
    other = value;
  } else if (member === 'form' && index !== undefined) {
    changeForm(Number(index), value);
  } else if (index !== undefined) {
    card.lines[index][member] = value;
    if (member === 'ingredient') {
      card.lines[index].form = '';
      fillSelect(byId(`form-${index}`), formOptions(value), '');
    }
    if (member === 'amount') {
      holdWhile(Number(index));
    }
  } else {
    card[member] = value;
    if (member === 'base' || member === 'kind') {
      build();
      byId(member).focus();
    }
  }
  keepCard();
  update();
}

function sound() {
  const { authored, faults, rows } = readCard(card, app.settings.measures);
  return faults.length === 0 && engine.readFormula(authored).ok ? { authored, rows } : null;
}

// More pepper at a fixed dose is less salt: one of the two is held, and it is said which moved.
function holdWhile(i) {
  const now = readCard(card, app.settings.measures);
  const line = before?.rows.indexOf(i);
  const amount = now.authored.lines[now.rows.indexOf(i)]?.amount;
  const was = line >= 0 ? before.authored.lines[line].amount : null;
  byId('changed').textContent = '';
  if (!was || !amount || amount.unit !== was.unit || !before.authored.dose) {
    return;
  }
  const { ok, errors } = engine.changeFormula({ formula: before.authored, line, amount: amount.value, hold });
  if (errors) {
    byId('changed').textContent = errors.map(error => error.detail).join(' ');
    return;
  }
  const { dose } = ok.formula;
  if (hold === 'salt' && dose) {
    Object.assign(card, { dose: showNumber(dose.value), doseUnit: dose.unit === 'g/100cm2' ? card.doseUnit : dose.unit });
    byId('dose').value = card.dose;
    if (byId('doseUnit')) {
      byId('doseUnit').value = card.doseUnit;
    }
  }
  byId('changed').textContent = changeInWords(ok);
}

function changeInWords({ before: was, after: is }) {
  return say('formula.changed', {
    doseBefore: totalOf(was), doseAfter: totalOf(is), saltBefore: band(was.saltRatio), saltAfter: band(is.saltRatio),
  });
}

// Another salt or grind: the mass stays, so a volume changes.
function changeForm(i, form) {
  const base = sound();
  card.lines[i].form = form;
  const line = base?.rows.indexOf(i) ?? -1;
  if (line >= 0 && form) {
    const { ok } = engine.changeFormula({ formula: base.authored, line, form });
    const amount = ok?.formula.lines[line].amount;
    if (amount) {
      card.lines[i].amount = showNumber(Number(amount.value.toPrecision(4)));
      byId(`amount-${i}`).value = card.lines[i].amount;
    }
    if (ok) {
      byId('changed').textContent = changeInWords(ok);
    }
  }
}

function update() {
  const { authored, faults, isBlank, rows } = readCard(card, app.settings.measures);
  const { ok, errors = [] } = isBlank || faults.length > 0 ? {} : engine.readFormula(authored.name ? authored : { ...authored, name: '–' });
  const all = faults.concat(errors.map(error => ({ field: fieldOf(error.pointer, rows), detail: error.detail })));
  showFaults(section, all.map(fault => byId(fault.field) ? fault : { ...fault, field: 'lines' }));
  card.lines.forEach((line, i) => {
    const answer = ok?.lines[rows.indexOf(i)];
    byId(`comes-${i}`).textContent = answer ? lineInWords(answer) : '';
  });
  byId('whole').replaceChildren(...(ok ? [wholeOf(ok)] : []));
  byId('card-at-once').textContent = ok ? say('formula.atOnce', { total: totalOf(ok), salt: band(ok.saltShare) }) : '';
  byId('card-at-once').hidden = !ok;
  byId('remarks').replaceChildren(...(ok?.findings.length > 0 ? [make('ul', { class: 'findings' }, ok.findings.map(finding =>
    make('li', { class: finding.severity }, make('strong', null, say(`severity.${finding.severity}`)), ' ', finding.message)))] : []));
  byId('save').disabled = !ok;
  showBeside(ok);
}

async function showBeside(answer) {
  const against = other === 'stored' ? stored : other && await app.library.get(other);
  const read = against && engine.readFormula(app.library.authored(against)).ok;
  byId('beside')?.replaceChildren(...(answer && read ? [beside([{ title: say('formula.compare.this'), answer }, { title: other === 'stored' ? say('formula.compare.stored') : read.name, answer: read }])] : []));
}

// A second tap while the first is on its way is the same wish.
async function save(target) {
  if (isSaving) {
    return;
  }
  isSaving = true;
  try {
    await saveOnce(target);
  } finally {
    isSaving = false;
  }
}

async function saveOnce(target) {
  const { authored } = readCard(card, app.settings.measures);
  if (!authored.name) {
    showFaults(section, [{ field: 'name', code: 'name-missing' }]);
    byId('name').focus();
    return;
  }
  const { id: now, isKept } = await app.library.save(target, authored, target ? based : {});
  cards.forget(id);
  id = now;
  await readStored();
  based = standing();
  app.putOn(now, target ?? now);
  const edit = app.library.editOf(now);
  // The cook may have gone to another screen while it was sent.
  if (!section.hidden) {
    history.replaceState(null, '', `#/formula/${encodeURIComponent(now)}`);
  }
  build();
  byId('saved').replaceChildren(
    say(!isKept ? 'app.not-kept' : edit ? `formulas.state.${edit.state}` : 'formula.saved', { revision: stored?.revision }), ' ',
    make('a', { class: 'plain', href: edit?.state === 'conflict' ? '#/formulas' : '#/bench' }, say(edit?.state === 'conflict' ? 'formulas.settle' : 'weighout.back')));
  if (edit?.state === 'refused') {
    showFaults(section, (edit.errors ?? []).map(error => ({ field: fieldOf(error.pointer, card.lines.map((_, i) => i)), detail: error.detail })));
  }
}

function startOver() {
  card = written(stored);
  based = standing();
  cards.forget(id);
  build();
}

function add() {
  addLine(card);
  keepCard();
  build();
  byId(`ingredient-${card.lines.length - 1}`).focus();
}

function drop(i) {
  card.lines.splice(i, 1);
  keepCard();
  build();
  byId('lines').focus();
}

function keepCard() {
  if (!cards.keep(id, { card, based })) {
    byId('saved').textContent = say('app.not-kept');
  }
}
