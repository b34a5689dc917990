// One cup weighed several times: the kitchen's own density of a form.
import { showFaults } from '../bench/faults.js';
import { button, byId, field, fillSelect, make, selectOf, textArea } from '../dom.js';
import * as engine from '../engine.js';
import { formOptions, named, worded } from '../forms/choices.js';
import { formOf } from '../forms/workbench.js';
import { measureSymbol } from '../kept/settings.js';
import { loadWritten, saveWritten } from '../kept/written.js';
import { readAmount } from '../words/amounts.js';
import { showEstimate, showNumber } from '../words/numbers.js';
import { band, names, quantity } from '../words/show.js';
import { say, sayCount } from '../words/texts.js';
import { conflictOf } from './conflict.js';

const measures = ['cup', 'tbsp', 'tsp'];
const blank = { ingredient: 'salt', form: 'table', measure: 'cup', weights: '' };

/** The section, and what brings it up to date. */
export function cupsOf(app) {
  const cup = loadWritten('cup', blank);
  const element = formOf(say('own.cups'), ({ name, value }) => {
    cup[name] = value;
    if (name === 'ingredient') {
      const options = formOptions(cup.ingredient).slice(1);
      cup.form = options[0].value;
      fillSelect(byId('cup-form'), options, cup.form);
    }
    byId('cup-saved').textContent = saveWritten('cup', cup) ? '' : say('app.not-kept');
    update();
  },
  make('h3', null, say('own.cups')),
  make('p', { class: 'hint' }, say('own.cups.how')),
  field('cup-ingredient', say('formula.ingredient'), selectOf('ingredient', named(engine.allIngredients()), cup.ingredient)),
  field('cup-form', say('formula.form'), selectOf('form', formOptions(cup.ingredient).slice(1), cup.form)),
  field('cup-measure', say('own.measure'), selectOf('measure', worded(measures, 'own.measure'), cup.measure)),
  field('cup-weights', say('own.weights'), textArea('weights', cup.weights), { hint: say('own.weights.hint') }),
  make('div', { id: 'cup-answer', role: 'status' }),
  button(say('own.save'), save, { class: 'main', id: 'cup-save', disabled: true }),
  make('p', { id: 'cup-saved', role: 'status' }),
  make('div', { id: 'cup-list' }));
  app.own.watch(() => byId('cup-list') && list());
  return { element, show: () => {
    update();
    list();
  } };

  function read() {
    const rows = cup.weights.split(/[\r\n;]+/).map(row => row.trim()).filter(Boolean).map(row => readAmount(row, app.settings.measures, 'g'));
    const fault = rows.find(row => row.code);
    const volume = { value: 1, unit: measureSymbol(cup.measure, app.settings.measures) };
    return { faults: fault ? [{ field: 'cup-weights', ...fault }] : [], weighings: rows.filter(row => row.amount).map(({ amount }) => ({ volume, weight: amount })) };
  }

  function update() {
    const { faults, weighings } = read();
    const { ok, errors = [] } = weighings.length > 0 && faults.length === 0 ? engine.weigh(cup.ingredient, cup.form, weighings) : {};
    showFaults(element, faults.concat(errors.map(({ detail }) => ({ field: 'cup-weights', detail }))));
    byId('cup-save').disabled = !ok;
    byId('cup-answer').replaceChildren(...(ok ? [make('p', null,
      make('strong', { class: 'figure' }, band(ok.density)), ' ',
      say(ok.spreadPercent === undefined ? 'own.once' : 'own.spread', { count: showNumber(ok.count), spread: showEstimate(ok.spreadPercent ?? 0) }),
      ok.reference === undefined ? '' : ` ${say('own.reference', { reference: showEstimate(ok.reference) })}`)] : []));
  }

  async function save() {
    const { weighings } = read();
    const isKept = await app.own.change({ ingredient: cup.ingredient, form: cup.form }, () => weighings);
    byId('cup-saved').textContent = say(isKept ? 'own.saved' : 'app.not-kept');
  }

  function list() {
    const all = app.own.everything;
    const nameOf = density => {
      const { name, form } = names(density);
      return form ? `${name}, ${form}` : name;
    };
    byId('cup-list').replaceChildren(...(all.length === 0 ? [] : [
      make('h4', null, say('own.list')),
      ...all.filter(item => item.state === 'conflict').map(item => conflictOf(item, nameOf(item), item.weighings, told(item), choice => app.own.settle(item, choice))),
      make('ul', { class: 'library' }, all.map(density => make('li', null,
        make('span', null, nameOf(density)),
        make('small', null, [
          density.weighings ? sayCount('own.item', density.weighings.length) : say('own.takenOut'),
          density.state !== 'kept' && say(`formulas.is.${density.state}`),
          ...density.errors?.map(error => error.detail) ?? [],
        ].filter(Boolean).join(', ')),
        density.weighings ? button(say('own.toBook'), () => takeOut(density), { class: 'plain', 'aria-label': say('own.toBook.of', { name: nameOf(density) }) }) : null)))]));
  }

  async function takeOut({ ingredient, form, weighings }) {
    await app.own.change({ ingredient, form }, () => null);
    app.notices.offerBack('own', say('own.taken'), () => app.own.change({ ingredient, form }, () => weighings));
    element.closest('.screen').focus();
  }
}

// A version of what a cup holds, in words.
function told({ ingredient, form }) {
  return weighings => {
    const figure = engine.weigh(ingredient, form, weighings).ok;
    return [...(figure ? [band(figure.density)] : []), ...weighings.map(({ volume, weight }) =>
      say('own.filling', { volume: quantity({ value: volume.value, unit: say(`unit.${volume.unit}`) }), weight: quantity(weight) }))];
  };
}
