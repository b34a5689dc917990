// The form: what it offers, what it holds, and that nothing written in it is lost.
import { byId, fillSelect } from './dom.js';
import { loadDraft, saveDraft } from './draft.js';
import { locale, showNumber } from './numbers.js';
import { say } from './texts.js';

const steps = ['0.1 g', '0.5 g', '1 g', '2 g', '5 g', '10 g', '0.05 oz', '0.1 oz', '0.5 oz', '1 oz'];

export class Form {
  /** @param {(field: string) => void} onChange called after every change, with the draft already kept. */
  constructor(onChange) {
    this.draft = loadDraft();
    this.onChange = onChange;
    const element = byId('pile-form');
    element.addEventListener('submit', event => event.preventDefault());
    element.addEventListener('input', event => this.take(event.target));
  }

  /** Puts the draft into the fields. */
  fill() {
    fillSelect(byId('weighingStep'), steps.map(value => ({ value, text: stepInWords(value) })), this.draft.weighingStep);
    for (const field of ['pile', 'bareUnit', 'trimLoss', 'overage', 'portion']) {
      byId(field).value = this.draft[field];
    }
    for (const radio of document.getElementsByName('weightIs')) {
      radio.checked = radio.value === this.draft.weightIs;
    }
    this.showWhatFollows();
  }

  take(field) {
    this.draft[field.name] = field.value;
    this.showWhatFollows();
    byId('keeping').textContent = saveDraft(this.draft) ? '' : say('app.not-kept');
    this.onChange(field.name);
  }

  showWhatFollows() {
    byId('trimLoss-field').hidden = this.draft.weightIs !== 'purchase';
    byId('more-summary').textContent = say('form.more', {
      bareUnit: this.draft.bareUnit,
      step: stepInWords(this.draft.weighingStep),
      overage: this.draft.overage.trim() || say('form.blank'),
      portion: this.draft.portion.trim() || say('form.blank'),
    });
  }

  offerCuts(cuts) {
    const options = cuts.map(({ id, name }) => ({ value: id, text: name }));
    fillSelect(byId('cut'), [{ value: '', text: say('form.cut.choose') }, ...options], this.draft.cut);
  }

  /** @param {{id: string, name: string, kind: string}[]} items */
  offerFormulas(items) {
    const collator = new Intl.Collator(locale, { numeric: true });
    const options = items
      .toSorted((a, b) => collator.compare(a.name, b.name))
      .map(({ id, name, kind }) => ({ value: id, text: `${name} (${say(`kind.${kind}`)})` }));
    fillSelect(byId('formula'), [{ value: '', text: say('form.formula.choose') }, ...options], this.draft.formula);
  }
}

function stepInWords(step) {
  const [value, unit] = step.split(' ');
  return `${showNumber(Number(value))} ${unit}`;
}
