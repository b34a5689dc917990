// One amount turned into another measure.
import { showFaults } from '../bench/faults.js';
import { byId, fillSelect, make } from '../dom.js';
import * as engine from '../engine.js';
import { formOptions, named, worded } from '../forms/choices.js';
import { fieldsOf, formOf } from '../forms/workbench.js';
import { measureSymbol } from '../kept/settings.js';
import { readAmount } from '../words/amounts.js';
import { readNumber } from '../words/numbers.js';
import { ends, estimate, sourceOf } from '../words/show.js';
import { say } from '../words/texts.js';

const targets = ['g', 'kg', 'oz', 'lb', 'tsp', 'tbsp', 'cup', 'mL', 'L'];

let app;
const asked = { ingredient: 'salt', form: '', size: '', sizeUnit: 'mesh', amount: '1 cup', to: 'g' };

export async function open(section, shared) {
  app = shared;
  await app.ready;
  const { number, text, select } = fieldsOf('convert', asked);
  const form = formOf(say('screen.convert'), ({ name, value }) => {
    asked[name] = value;
    if (name === 'ingredient') {
      asked.form = '';
      fillSelect(byId('convert-form'), formOptions(asked.ingredient), '');
    }
    update(section);
  },
  select('ingredient', { label: say('formula.ingredient'), options: named(engine.allIngredients()) }),
  select('form', { label: say('formula.form'), options: formOptions(asked.ingredient) }),
  make('details', null, make('summary', null, say('convert.bySize')),
    make('div', { class: 'pair' }, number('size'), select('sizeUnit', { options: worded(['mesh', 'micrometres'], 'convert') }))),
  make('div', { class: 'pair' },
    text('amount', { label: say('formula.amount') }),
    select('to', { options: worded(targets, 'unit') })));
  section.append(make('h2', null, say('screen.convert')), make('div', { class: 'workbench' }, form, make('div', { class: 'outcome', id: 'converted', role: 'status' })));
  app.own.watch(() => update(section));
  return { show: () => update(section) };
}

function update(section) {
  const { amount, code, values } = readAmount(asked.amount, app.settings.measures);
  const faults = code ? [{ field: 'convert-amount', code, values }] : [];
  const size = asked.size.trim() ? readNumber(asked.size).value : undefined;
  if (asked.size.trim() && size === undefined) {
    faults.push({ field: 'convert-size', code: 'not-a-number', values: { text: asked.size.trim() } });
  }
  const { conversion, errors = [] } = faults.length > 0 ? {} : engine.convert({
    ingredient: asked.ingredient, form: size === undefined ? asked.form || undefined : undefined,
    [asked.sizeUnit]: size, amount, to: measureSymbol(asked.to, app.settings.measures),
  });
  showFaults(section, faults.concat(errors.map(({ pointer, detail }) => ({ field: fieldOf(pointer), detail }))));
  byId('converted').replaceChildren(...(conversion ? resultOf(conversion) : []));
}

function fieldOf(pointer) {
  const member = pointer.split('/')[3];
  return { form: 'convert-form', mesh: 'convert-size', micrometres: 'convert-size', to: 'convert-to', ingredient: 'convert-ingredient' }[member] ?? 'convert-amount';
}

function resultOf({ result, density, findings }) {
  return [
    make('p', { class: 'result' }, make('strong', { class: 'figure' }, estimate(result.typical, say(`unit.${result.unit}`)))),
    result.low === result.high ? null : make('p', null, say('convert.between', ends({ ...result, unit: say(`unit.${result.unit}`) }))),
    density ? make('p', { class: 'source' }, density.origin === 'kitchen' ? say('convert.own') : sourceOf(density)) : null,
    findings.length > 0 ? make('ul', { class: 'findings' }, findings.map(finding => make('li', { class: finding.severity },
      make('strong', null, say(`severity.${finding.severity}`)), ' ', finding.message))) : null,
  ].filter(Boolean);
}
