// What is left of a cut after cooking, from several cooks: the kitchen's own yield.
import { showFaults } from '../bench/faults.js';
import { button, byId, field, fillSelect, make, numberInput, selectOf, textArea } from '../dom.js';
import * as engine from '../engine.js';
import { cutOptions, orNone, worded } from '../forms/choices.js';
import { Reading } from '../forms/reading.js';
import { formOf } from '../forms/workbench.js';
import { loadWritten, saveWritten } from '../kept/written.js';
import { showFixed } from '../words/numbers.js';
import { say } from '../words/texts.js';
import { readCooks } from './cooks.js';
import { Recorded } from './recorded.js';
import { methodInWords, yieldFigureOf } from './yieldfigure.js';

const blank = { cut: '', method: '', beforeIs: 'green', trimLoss: '', day: '', cooks: '' };
const methods = ['smoked', 'roasted', 'grilled', 'braised'];

/** The section, and what brings it up to date. */
export function yieldsOf(app) {
  const written = loadWritten('cooks', blank);
  const cuts = cutOptions();
  const recorded = new Recorded(app, cuts);
  const element = formOf(say('own.yields'), ({ name, value }) => {
    written[name] = value;
    if (name === 'cut') {
      fillSelect(byId('yield-method'), methodOptions(written.cut), written.method);
      written.method = byId('yield-method').value;
    }
    byId('yield-saved').textContent = saveWritten('cooks', written) ? '' : say('app.not-kept');
    update();
  },
  make('h3', null, say('own.yields')),
  make('p', { class: 'hint' }, say('own.yields.how')),
  field('yield-cut', say('form.cut'), selectOf('cut', orNone(cuts, 'form.cut.choose'), written.cut)),
  make('div', { class: 'pair wide' },
    field('yield-method', say('own.yield.method'), selectOf('method', methodOptions(written.cut), written.method)),
    field('yield-day', say('own.yield.day'), dayInput())),
  make('div', { class: 'pair' },
    field('yield-beforeIs', say('own.yield.beforeIs'), selectOf('beforeIs', worded(['green', 'purchase'], 'own.yield.beforeIs'), written.beforeIs)),
    field('yield-trimLoss', say('own.yield.trimLoss'), numberInput('trimLoss', written.trimLoss), { hint: say('own.yield.trimLoss.hint') })),
  field('yield-cooks', say('own.yield.cooks'), textArea('cooks', written.cooks, { rows: 4 }), { hint: say('own.yield.cooks.hint', { before: showFixed(5.2, 1), after: showFixed(3.1, 1), total: showFixed(12.4, 1) }) }),
  make('div', { id: 'yield-answer', role: 'status' }),
  button(say('own.yield.save'), save, { class: 'main', id: 'yield-save', disabled: true }),
  make('p', { id: 'yield-saved', role: 'status' }),
  recorded.element);
  app.yields.watch(() => byId('yield-answer') && update());
  return { element, show: () => {
    update();
    recorded.show();
  } };

  function dayInput() {
    const input = make('input', { name: 'day', type: 'date' });
    input.value = written.day || today();
    return input;
  }

  function read() {
    const reading = new Reading(app.settings);
    const isPurchase = written.beforeIs === 'purchase';
    const trimLoss = isPurchase ? reading.amount('yield-trimLoss', written.trimLoss, '%') : undefined;
    const { records, lines, faults } = readCooks(written.cooks, {
      bareUnit: app.settings.bareUnit, date: byId('yield-day').value, method: written.method || undefined, beforeIs: written.beforeIs, trimLoss,
    });
    if (written.cut === '' && records.length > 0) {
      reading.faults.push({ field: 'yield-cut', code: 'cut-of-cooks' });
    }
    return { records, lines, faults: reading.faults.concat(faults.map(fault => ({ field: 'yield-cooks', ...fault }))) };
  }

  function update() {
    byId('yield-trimLoss').closest('.field').hidden = written.beforeIs !== 'purchase';
    const { records, lines, faults } = read();
    const held = app.yields.of({ cut: written.cut })?.records ?? [];
    const all = [...held, ...records];
    const { ok, errors = [] } = written.cut && all.length > 0 ? engine.recordCooks(written.cut, all) : {};
    const places = errors.map(({ pointer, detail }) => placed(pointer, lines, held.length, detail));
    showFaults(element, faults.concat(places));
    byId('yield-save').disabled = records.length === 0 || faults.length + places.length > 0;
    byId('yield-answer').replaceChildren(...(ok && records.length > 0 ? ok.yields.map(yieldFigureOf) : []));
  }

  async function save() {
    const { records } = read();
    const { cut } = written;
    const isKept = await app.yields.change({ cut }, before => [...before, ...records]);
    written.cooks = '';
    byId('yield-cooks').value = '';
    saveWritten('cooks', written);
    update();
    byId('yield-saved').textContent = say(isKept ? 'own.yield.saved' : 'app.not-kept');
    byId('yield-cooks').focus();
  }
}

function methodOptions(cut) {
  const known = cut ? engine.cut(cut).cookYields.map(figure => figure.method) : [];
  return ['', ...new Set([...known, ...methods])].map(value => ({ value, text: methodInWords(value) }));
}

// The day as it is here, not in Greenwich.
function today() {
  const now = new Date();
  return `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, '0')}-${String(now.getDate()).padStart(2, '0')}`;
}

function placed(pointer, lines, before, detail) {
  const [, , index, member] = pointer.split('/');
  const at = Number(index) - before;
  if (member === 'date' && byId('yield-day').value === '') {
    return { field: 'yield-day', detail };
  }
  return ['trimLoss', 'method'].includes(member) ? { field: `yield-${member}`, detail } : { field: 'yield-cooks', line: lines[at], detail };
}
