// What the cook enters on the bench: what goes on, on which pile. Nothing written in it is lost.
import { button, byId, field, fillSelect, make, numberInput, selectOf, textArea } from '../dom.js';
import { named, orNone, plain, worded } from '../forms/choices.js';
import { loadDraft, newLine, newTreatment, saveDraft, watchOtherTabs } from '../kept/draft.js';
import { locale, showFixed, showNumber } from '../words/numbers.js';
import { say, sayCount } from '../words/texts.js';
import { readPile } from '../words/weights.js';
import { allTerms, kindOf, stages, termsOf } from './terms.js';

const steps = ['0.1 g', '0.5 g', '1 g', '2 g', '5 g', '10 g', '0.05 oz', '0.1 oz', '0.5 oz', '1 oz'];
const mostTreatments = 20;
const mostLines = 100;
const units = ['lb', 'oz', 'kg', 'g'];

export class Entry {
  /**
   * @param {object} app what all screens share.
   * @param {(field: string) => void} onChange called after every change, with the draft already kept.
   */
  constructor(app, onChange) {
    this.app = app;
    this.onChange = onChange;
    this.draft = loadDraft();
    this.cuts = [];
    this.products = [];
    this.element = make('form', { id: 'pile-form', class: 'entry', 'aria-label': say('bench.entry'), novalidate: true });
    this.element.addEventListener('submit', event => event.preventDefault());
    this.element.addEventListener('input', event => this.#take(event.target));
    watchOtherTabs(() => app.notices.show('tabs', say('app.other-tab')));
  }

  /** Builds the fields anew: after a treatment or a line was added, moved or taken out. */
  build() {
    const { draft } = this;
    this.element.replaceChildren(
      make('h2', null, say('form.goesOn')),
      make('ol', { class: 'stack' }, draft.treatments.map((treatment, t) => this.#treatment(treatment, t))),
      this.#adders(),
      make('h2', null, say('form.title')),
      ...draft.lines.map((line, i) => this.#line(line, i)),
      draft.lines.length < mostLines ? button(say('form.addLine'), () => this.#change(d => d.lines.push(newLine(d.lines)), `cut-${draft.lines.length}`), { class: 'plain' }) : null,
      this.#rest(),
      make('a', { id: 'at-once', class: 'at-once', href: '#sheet', hidden: true }),
      make('p', { class: 'hint', id: 'keeping', role: 'status' }));
    this.showWhatFollows();
  }

  /** What the reference knows, once it is loaded. */
  offer(cuts, products) {
    this.cuts = cuts;
    this.products = products;
    this.draft.lines.forEach((line, i) => {
      fillSelect(byId(`cut-${i}`), this.#cutOptions(), line.cut);
      fillSelect(byId(`product-${i}`), products, line.product);
    });
    this.showWhatFollows();
  }

  offerFormulas() {
    this.draft.treatments.forEach((treatment, t) => {
      treatment.formula = this.app.library.nowCalled(treatment.formula);
      fillSelect(byId(`formula-${t}`), this.#formulaOptions(treatment), treatment.formula);
    });
    this.showWhatFollows();
  }

  /** Changes the draft in another way than by writing in a field, and shows it. */
  set(change, focusOn) {
    this.#change(change, focusOn);
  }

  #change(change, focusOn) {
    change(this.draft);
    this.#keep();
    this.build();
    byId(focusOn)?.focus();
    this.onChange('');
  }

  #take(target) {
    const [name, index] = target.name.split('-');
    const { draft } = this;
    if (name === 'bareUnit') {
      this.app.settings.set('bareUnit', target.value);
    } else if (name === 'on') {
      const { on } = draft.treatments[index];
      const keys = on.length === 0 ? draft.lines.map(line => line.key) : on;
      const left = target.checked ? [...new Set([...keys, target.value])] : keys.filter(key => key !== target.value);
      // On nothing it is no treatment: the last one stays ticked.
      target.checked = left.length === 0 || target.checked;
      draft.treatments[index].on = left.length === 0 ? keys : left;
    } else if (index === undefined) {
      draft[name] = target.value;
    } else {
      const owner = name in draft.treatments[0] ? draft.treatments[index] : draft.lines[index];
      owner[name] = target.value;
      if (name === 'formula') {
        owner.adjusted = null;
      }
    }
    this.#keep();
    this.showWhatFollows();
    this.onChange(target.name);
  }

  #keep() {
    const isKept = saveDraft(this.draft);
    if (byId('keeping')) {
      byId('keeping').textContent = isKept ? '' : say('app.not-kept');
    }
  }

  showWhatFollows() {
    const { draft, app: { settings } } = this;
    draft.lines.forEach((line, i) => {
      byId(`trimLoss-${i}`).closest('.field').hidden = line.weightIs !== 'purchase';
    });
    draft.lines.forEach((line, i) => {
      if (byId(`planned-${i}`)) {
        byId(`planned-${i}`).textContent = this.#plannedInWords(line);
      }
    });
    for (const name of this.element.querySelectorAll('[data-line]')) {
      name.textContent = this.#lineName(draft.lines[name.dataset.line], Number(name.dataset.line));
    }
    byId('add-treatment').hidden = draft.treatments.length >= mostTreatments || draft.treatments.some(({ formula, adjusted }) => !formula && !adjusted);
    draft.treatments.forEach((treatment, t) => {
      byId(`adjust-${t}`).hidden = !treatment.formula;
      byId(`adjust-${t}`).href = `#/formula/${encodeURIComponent(treatment.formula)}`;
      const asked = termsOf(kindOf(treatment, this.app.library.items));
      for (const term of allTerms) {
        byId(`${term}-${t}`).closest('.field').hidden = !asked.includes(term);
      }
      const said = asked.filter(term => treatment[term].trim()).map(term => say(`form.how.${term}`, { [term]: termInWords(term, treatment[term]) }));
      byId(`how-${t}`).textContent = said.length > 0 ? said.join(', ') : say('form.how');
    });
    byId('more-summary').textContent = say('form.more', {
      bareUnit: settings.bareUnit,
      step: stepInWords(draft.weighingStep),
      overage: draft.overage.trim() || say('form.blank'),
      portion: draft.portion.trim() || say('form.blank'),
    });
  }

  #treatment(treatment, t) {
    const { draft, app } = this;
    const many = draft.treatments.length > 1;
    const select = selectOf(`formula-${t}`, this.#formulaOptions(treatment), treatment.formula);
    return make('li', { class: 'layer' },
      field(`formula-${t}`, many ? say('form.formula.place', { place: t + 1 }) : say('form.formula'), select, { described: `formula-${t}-state` }),
      make('p', { class: 'hint', id: `formula-${t}-state` }),
      draft.lines.length > 1 ? this.#on(treatment, t) : null,
      make('div', { class: 'beside' },
        make('details', null, make('summary', { id: `how-${t}` }),
          allTerms.map(term => field(`${term}-${t}`, say(`form.${term}`), term === 'stage'
            ? selectOf(`stage-${t}`, orNone(worded(stages, 'form.stage'), 'form.stage.none'), treatment.stage)
            : numberInput(`${term}-${t}`, treatment[term]), { hint: say(`form.${term}.hint`) }))),
        many && t > 0 ? button(say('form.earlier'), () => this.#change(d => d.treatments.splice(t - 1, 2, d.treatments[t], d.treatments[t - 1]), `formula-${t - 1}`), { class: 'plain', 'aria-label': say('form.earlier.of', { place: t + 1 }) }) : null,
        many ? button(say('form.takeOut'), () => this.#change(d => d.treatments.splice(t, 1), 'formula-0'), { class: 'plain', 'aria-label': say('form.takeOut.formula', { place: t + 1 }) }) : null,
        make('a', { class: 'plain', id: `adjust-${t}`, href: '#/formula/new' }, say('form.adjust'))),
      treatment.adjusted ? make('p', { class: 'flag' }, say('form.adjusted'), ' ',
        button(say('form.adjusted.save'), () => app.saveAdjusted(t), { class: 'plain' }), ' ',
        button(say('form.adjusted.drop'), () => this.#change(d => { d.treatments[t].adjusted = null; }, `formula-${t}`), { class: 'plain' })) : null);
  }

  #on(treatment, t) {
    return make('fieldset', { class: 'on' },
      make('legend', null, say('form.on')),
      this.draft.lines.map((line, i) => {
        const box = make('input', { type: 'checkbox', name: `on-${t}`, value: line.key });
        box.checked = treatment.on.length === 0 || treatment.on.includes(line.key);
        return make('label', { class: 'choice' }, box, make('span', { 'data-line': i }, this.#lineName(line, i)));
      }));
  }

  #lineName(line, i) {
    return this.cuts.find(cut => cut.id === line.cut)?.name ?? say('form.line', { number: i + 1 });
  }

  #adders() {
    const { draft } = this;
    return make('div', { class: 'beside' },
      button(say('form.addTreatment'), () => this.#change(d => d.treatments.push(newTreatment()), `formula-${draft.treatments.length}`), { class: 'plain', id: 'add-treatment' }),
      make('a', { class: 'plain', href: '#/formula/new' }, say('form.write')));
  }

  #line(line, i) {
    const many = this.draft.lines.length > 1;
    return make('section', { class: 'line', 'aria-label': this.#lineName(line, i) },
      field(`cut-${i}`, say('form.cut'), selectOf(`cut-${i}`, this.#cutOptions(), line.cut)),
      field(`pile-${i}`, say('form.pile'), textArea(`pile-${i}`, line.pile, { rows: 4 }), i > 0 ? {} : {
        hint: say('form.pile.hint', { decimal: showFixed(12.4, 1), short: showFixed(5.2, 1), each: showFixed(3.6, 1) }),
      }),
      line.planned ? this.#planned(line, i) : null,
      make('fieldset', { class: 'field' },
        make('legend', null, say('form.weightIs')),
        ['green', 'purchase'].map(value => {
          const radio = make('input', { type: 'radio', name: `weightIs-${i}`, value });
          radio.checked = line.weightIs === value;
          return make('label', { class: 'choice' }, radio, make('span', null, say(`form.weightIs.${value}`)));
        })),
      field(`trimLoss-${i}`, say('form.trimLoss'), numberInput(`trimLoss-${i}`, line.trimLoss), { hint: say('form.trimLoss.hint') }),
      make('div', { class: 'beside' },
        make('details', null, make('summary', null, say('form.meat')),
          field(`addedSolution-${i}`, say('form.addedSolution'), numberInput(`addedSolution-${i}`, line.addedSolution), { hint: say('form.addedSolution.hint') }),
          field(`product-${i}`, say('cure.product'), selectOf(`product-${i}`, this.products, line.product), { hint: say('cure.product.hint') })),
        many ? button(say('form.takeOut'), () => this.#change(d => d.lines.splice(i, 1), 'cut-0'), { class: 'plain', 'aria-label': say('form.takeOut.line', { number: i + 1 }) }) : null));
  }

  // From a purchase plan: until the meat is trimmed and weighed its weights as bought stand in the field.
  #planned(line, i) {
    const isBought = line.pile === line.planned && line.weightIs === 'purchase';
    const swap = isBought ? { pile: '', weightIs: 'green', trimLoss: '' } : { pile: line.planned, weightIs: 'purchase' };
    const key = isBought ? 'plan.trimmed' : 'plan.back';
    return make('div', { class: 'planned' },
      make('p', { class: 'hint', id: `planned-${i}` }),
      button(say(key), () => this.#change(d => Object.assign(d.lines[i], swap), `pile-${i}`), { class: 'plain', id: `swap-${i}`, 'aria-label': say(`${key}.of`, { cut: this.#lineName(line, i) }) }));
  }

  #plannedInWords({ pile, planned, weightIs }) {
    const written = readPile(pile, this.app.settings.bareUnit).pieces.length;
    return weightIs === 'green' && written > 0
      ? sayCount('plan.written', written, { planned, of: showNumber(readPile(planned, this.app.settings.bareUnit).pieces.length) })
      : say('plan.asPlanned', { planned });
  }

  #rest() {
    const { draft, app: { settings } } = this;
    const options = steps.map(value => ({ value, text: stepInWords(value) }));
    if (settings.scales.length > 0 || draft.weighingStep === 'scales') {
      options.push({ value: 'scales', text: say('form.scales') });
    }
    return make('details', { class: 'more', id: 'more' },
      make('summary', { id: 'more-summary' }),
      field('bareUnit', say('form.bareUnit'), selectOf('bareUnit', plain(units), settings.bareUnit)),
      field('weighingStep', say('form.weighingStep'), selectOf('weighingStep', options, draft.weighingStep)),
      field('overage', say('form.overage'), numberInput('overage', draft.overage)),
      field('portion', say('form.portion'), numberInput('portion', draft.portion)));
  }

  #cutOptions() {
    return orNone(named(this.cuts), 'form.cut.choose');
  }

  #formulaOptions(treatment) {
    const collator = new Intl.Collator(locale, { numeric: true });
    const options = this.app.library.items
      .toSorted((a, b) => collator.compare(a.name, b.name))
      .map(({ id, name, kind, state }) => ({ value: id, text: `${name} (${say(`kind.${kind}`)})${state === 'kept' ? '' : `, ${say(`formulas.is.${state}`)}`}` }));
    return [{ value: '', text: treatment.adjusted ? treatment.adjusted.name : say('form.formula.choose') }, ...options];
  }
}

function stepInWords(step) {
  if (step === 'scales') {
    return say('form.scales');
  }
  const [value, unit] = step.split(' ');
  return `${showNumber(Number(value))} ${unit}`;
}

function termInWords(term, text) {
  switch (term) {
    case 'stage':
      return say(`form.stage.${text}`);
    case 'retained':
      // Its text writes the sign itself.
      return text.replaceAll('%', '').replace(/\s+/g, ' ').trim();
    default:
      return text.trim();
  }
}
