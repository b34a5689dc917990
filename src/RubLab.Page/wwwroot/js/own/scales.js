// The kitchen's scales and what its bowl holds.
import { showFaults } from '../bench/faults.js';
import { button, byId, field, make, numberInput } from '../dom.js';
import { formOf } from '../forms/workbench.js';
import { readAmount } from '../words/amounts.js';
import { quantity } from '../words/show.js';
import { say } from '../words/texts.js';

const mostScales = 10;

export function scalesOf(app) {
  const { settings } = app;
  const element = formOf(say('own.scales'), ({ name, value }) => name === 'bowl' && takeBowl(value));
  build();
  return element;

  function build() {
    element.replaceChildren(
      make('h3', null, say('own.scales')),
      make('p', { class: 'hint' }, say('own.scales.how')),
      make('ul', { class: 'library' }, settings.scales.map((scale, i) => make('li', null,
        make('span', null, say(scale.capacity ? 'own.scale' : 'own.scale.open', { step: quantity(scale.step), capacity: scale.capacity && quantity(scale.capacity) })),
        button(say('form.takeOut'), () => {
          settings.set('scales', settings.scales.filter((_, at) => at !== i));
          build();
        }, { class: 'plain', 'aria-label': say('own.dropScale', { step: quantity(scale.step) }) })))),
      make('div', { class: 'pair' },
        field('scale-step', say('own.step'), make('input', { autocomplete: 'off' }), { hint: say('own.step.hint') }),
        field('scale-capacity', say('own.capacity'), make('input', { autocomplete: 'off' }))),
      settings.scales.length < mostScales ? button(say('own.addScale'), add, { class: 'plain' }) : '',
      field('own-bowl', say('own.bowl'), numberInput('bowl', settings.bowl), { hint: say('own.bowl.hint') }));
  }

  function takeBowl(text) {
    const { amount, code, values } = text.trim() ? readAmount(text, settings.measures, 'g') : {};
    showFaults(element, code ? [{ field: 'own-bowl', code, values }] : []);
    if (!code) {
      settings.set('bowl', amount ? `${amount.value} ${amount.unit}` : '');
    }
  }

  function add() {
    const faults = [];
    const read = (id, isRequired) => {
      const text = byId(id).value;
      if (!text.trim()) {
        return isRequired ? faults.push({ field: id, code: 'not-an-amount', values: { text: '' } }) && undefined : undefined;
      }
      const { amount, code, values } = readAmount(text, settings.measures, 'g');
      if (code || amount.value <= 0) {
        faults.push({ field: id, code: code ?? 'nothing', values: values ?? { text } });
      }
      return amount;
    };
    const step = read('scale-step', true);
    const capacity = read('scale-capacity', false);
    showFaults(element, faults);
    if (faults.length === 0) {
      settings.set('scales', [...settings.scales, JSON.parse(JSON.stringify({ step, capacity }))]);
      build();
      byId('scale-step').focus();
    }
  }
}
