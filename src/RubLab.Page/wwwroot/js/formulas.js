// The formulas the page offers, and the one that is chosen.
import { byId } from './dom.js';
import * as kitchen from './kitchen.js';
import { locale } from './numbers.js';
import { say } from './texts.js';

export class Formulas {
  /**
   * @param {import('./form.js').Form} form
   * @param {() => void} onChange called when the list, or what is known of the chosen formula, has changed.
   */
  constructor(form, onChange) {
    this.form = form;
    this.onChange = onChange;
    this.list = { items: [], fetchedAt: '', state: 'asking' };
    this.isFetching = false;
  }

  /** Offers what is kept, then what the server says, and keeps every formula of it. */
  async start() {
    this.offer({ ...this.list, ...await kitchen.keptList() });
    const refresh = () => this.refresh();
    window.addEventListener('online', refresh);
    document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && refresh());
    await refresh();
  }

  /** The listed formula that is chosen, or undefined. */
  get chosen() {
    return this.list.items.find(item => item.id === this.form.draft.formula);
  }

  async refresh() {
    this.offer(await kitchen.refreshList());
    await this.fetchChosen();
    if (this.list.state === 'fresh') {
      await this.keepRest();
    }
  }

  async fetchChosen() {
    if (this.chosen) {
      this.isFetching = true;
      this.onChange();
      await kitchen.keepFormula(this.chosen);
      this.isFetching = false;
      this.onChange();
    }
  }

  // One after the other, so that a kitchen with many formulas does not press the server.
  async keepRest() {
    for (const item of this.list.items) {
      if (!await kitchen.keepFormula(item)) {
        return;
      }
    }
  }

  offer(list) {
    this.list = list;
    this.form.offerFormulas(list.items);
    this.onChange();
  }

  /** Says under the field how things stand with the list and the chosen formula, of which `stored` is kept. */
  showState(stored) {
    byId('formula-state').textContent = this.stateInWords(stored);
  }

  stateInWords(stored) {
    const { items, fetchedAt, state, status } = this.list;
    if (this.chosen && !this.isFetching && state !== 'asking' && stored?.revision !== this.chosen.revision) {
      return stored ? say('formulas.older', { revision: stored.revision }) : say('formulas.not-kept');
    }
    if (this.chosen && !stored) {
      return say('formulas.fetching');
    }
    if (state === 'refused') {
      return say('formulas.refused', { status });
    }
    if (state === 'offline') {
      const when = fetchedAt && new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short' }).format(new Date(fetchedAt));
      return items.length > 0 ? say('formulas.offline', { when }) : say('formulas.offline-none');
    }
    if (items.length === 0) {
      return say(state === 'asking' ? 'formulas.asking' : 'formulas.none');
    }
    return this.form.draft.formula && !this.chosen ? say('formulas.gone') : '';
  }
}
