// A sauce or mop of this kitchen: what goes into the pot, and the weight to boil it down to.
import { showFaults } from '../bench/faults.js';
import { cautionsOf, findingsOf } from '../bench/remarks.js';
import { sodiumBar } from '../bench/saltdrawing.js';
import { checksOf } from '../checks.js';
import { button, byId, field, figureOf, fillSelect, headOf, make, selectOf } from '../dom.js';
import { named, orNone } from '../forms/choices.js';
import { bareHint, fieldsOf, formOf, keep, showBareUnit, workbenchOf } from '../forms/workbench.js';
import { loadWritten } from '../kept/written.js';
import { answerFor } from '../sauce/answer.js';
import { blank, fieldOf, readSauce } from '../sauce/request.js';
import { amount, band, doseOf, meat, names, quantity } from '../words/show.js';
import { say } from '../words/texts.js';

const kinds = ['sauce', 'mop'];

let app;
let section;
let written;

export async function open(element, shared) {
  app = shared;
  section = element;
  await app.ready;
  written = loadWritten('sauce', blank);
  const { choice, number, pair } = fieldsOf('sauce', written);
  const form = formOf(say('screen.sauce'), ({ name, value }) => {
    written[name] = value;
    keep(app, 'sauce', written);
    update();
  },
  field('sauce-formula', say('form.formula'), selectOf('formula', [], ''), { described: 'sauce-state' }),
  make('p', { class: 'hint', id: 'sauce-state' }),
  make('div', { class: 'pair' }, number('make', { hint: bareHint(say('sauce.make.hint')) }), number('portions')),
  pair('portion', 'density'),
  pair('juices', 'juicesSalt'),
  make('div', { class: 'pair' }, choice('by', ['left', 'solids', 'salt']), number('reduce')));
  section.append(make('h2', null, say('screen.sauce')), workbenchOf('sauce', form));
  app.library.watch(() => !section.hidden && update());
  app.own.watch(update);
  return { show: update };
}

async function update() {
  const items = app.library.items.filter(item => kinds.includes(item.kind));
  written.formula = app.library.nowCalled(written.formula);
  const chosen = items.some(item => item.id === written.formula) ? written.formula : '';
  fillSelect(byId('sauce-formula'), orNone(named(items), 'form.formula.choose'), chosen);
  const stored = chosen && await app.library.get(chosen);
  if (chosen && !stored) {
    app.library.fetch(chosen);
  }
  showBareUnit(section, app.settings);
  const read = readSauce(written, stored ? chosen : '', app.settings);
  const { ok, errors = [], faults: more = [] } = read.request ? answerFor(read, stored) : {};
  const faults = read.faults.concat(more);
  showFaults(section, faults.concat(errors.map(({ pointer, detail }) => ({ field: fieldOf(pointer, stored.lines.length), detail }))));
  byId('sauce-state').textContent = items.length === 0 ? say('sauce.none') : chosen && !stored ? say('formulas.not-kept') : '';
  byId('sauce-outcome').replaceChildren(...(ok ? outcomeOf(ok, stored) : [make('p', null, say(faults.length + errors.length > 0 ? 'sauce.mend' : 'sauce.empty'))]));
  byId('sauce-said').textContent = ok ? say(isBoiled(ok) ? 'sauce.said' : 'sauce.said.finished', { weight: meat(whole(ok.finished)) }) : '';
}

function outcomeOf(answer, { id, dose, base }) {
  const boiled = isBoiled(answer);
  const step = { value: answer.intoPot.value < 1000 ? 0.1 : 1, unit: 'g' };
  return [
    make('section', { 'aria-labelledby': 'sauce-pot' },
      make('h3', { id: 'sauce-pot' }, say(boiled ? 'sauce.boilTo' : 'sauce.finished')),
      make('p', { class: 'result' }, make('strong', { class: 'figure' }, meat(whole(answer.finished)))),
      boiled ? make('p', null, say('sauce.boiledOff', { water: meat(whole(answer.boiledOff)), left: quantity({ ...answer.reducedTo, value: Number(answer.reducedTo.value.toPrecision(3)) }) })) : null,
      boiled ? make('p', { class: 'hint' }, say('sauce.potHow')) : null),
    make('section', { class: 'weighing', 'aria-labelledby': 'sauce-weigh' },
      make('h3', { id: 'sauce-weigh' }, say('sauce.intoPot', { weight: meat(whole(answer.intoPot)) })),
      make('table', null,
        headOf(['sheet.ingredient', 'sheet.amount', 'sauce.saltOf'].map(key => say(key))),
        make('tbody', null, answer.lines.map(line => make('tr', null,
          make('th', { scope: 'row' }, names(line).name, make('small', null, names(line).form)),
          make('td', { class: 'figure' }, amount(line.intoPot, step)),
          make('td', null, line.salt.high > 0 ? band(line.salt) : say('form.blank')))))),
      dose ? make('p', null, say('sauce.onMeat', { dose: doseOf(dose), base: say(`base.${base}`) }), ' ', button(say('formulas.putOn'), () => toBench(id), { class: 'plain' })) : null),
    make('section', { 'aria-labelledby': 'sauce-salt' },
      make('h3', { id: 'sauce-salt' }, say('sauce.salt')),
      make('dl', { class: 'bands' },
        figureOf(say('sauce.saltPerKg'), band(answer.saltPerKgFinished)),
        figureOf(say('sauce.sodium100'), band(answer.sodiumPer100g)),
        figureOf(say('sauce.solids'), quantity(answer.solids)),
        answer.portion ? figureOf(say('sauce.sodiumPortion', { portion: quantity(answer.portion.amount) }), band(answer.portion.sodium)) : null,
        answer.referenceAmounts.map(serving => figureOf(say('sauce.sodiumOf', { name: serving.name, amount: quantity(serving.amount) }), band(serving.sodium)))),
      answer.portion && answer.checks.length > 0 ? sodiumBar(answer.portion.sodium, answer.checks) : null),
    ...checksOf(answer.checks),
    findingsOf(answer.findings),
    cautionsOf(answer.cautions),
  ].filter(Boolean);
}

function isBoiled({ boiledOff }) {
  return boiledOff.value > 0;
}

function whole({ value, unit }) {
  return { value: Math.round(value), unit };
}

function toBench(id) {
  app.putOn(id);
  app.go('bench');
}
