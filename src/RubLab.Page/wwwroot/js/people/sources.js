// What the shopping list is for: the sheet on the bench, sheets kept for it before, and the plan.
import { button, make } from '../dom.js';
import { meat, scaleOf } from '../words/show.js';
import { say, sayCount } from '../words/texts.js';

const mostSheets = 20;

export class Sources {
  #app;
  #written;
  #onChange;
  #bench;

  /** @param {{sheets: {title: string, body: string}[], countsBench: string}} written changed in place. */
  constructor(app, written, onChange) {
    this.#app = app;
    this.#written = written;
    this.#onChange = onChange;
    this.element = make('div', { class: 'card', id: 'shopping-of' });
  }

  /** @returns {Promise<{sheets: object[], formulas: object, lost: string[]}>} what to list, and titles of kept sheets whose formula is gone. */
  async read() {
    const sheet = await this.#app.sheet?.();
    this.#bench = sheet?.answer ? { title: titleOf(sheet.answer, sheet.read.pieces), body: JSON.stringify(sheet.read.request) } : undefined;
    const formulas = { ...sheet?.formulas };
    const sheets = [];
    const lost = [];
    for (const { title, body } of this.#kept()) {
      const request = JSON.parse(body);
      const found = await this.#formulasOf(request);
      if (found) {
        sheets.push(request);
        Object.assign(formulas, found);
      } else {
        lost.push(title);
      }
    }
    if (this.#bench && !this.#isKept() && this.#written.countsBench === 'yes') {
      sheets.push(sheet.read.request);
    }
    return { sheets, formulas, lost };
  }

  /** Whether the mixes a plan names are bought too: the cook says, once there are sheets that may hold the same. */
  takesMixes(sheets) {
    return sheets.length === 0 || this.#written.countsMixes === 'yes';
  }

  /**
   * @param {object | undefined} plan
   * @param {object[]} sheets what is counted beside it.
   * @param {string[]} lost
   */
  show(plan, sheets, lost) {
    const kept = this.#kept();
    const isOffered = this.#bench || kept.length > 0;
    const held = document.activeElement?.id;
    this.element.replaceChildren(...[
      make('p', { class: 'hint' }, say(plan ? (isOffered ? 'people.shopping.both' : 'people.shopping.plan') : isOffered ? 'people.shopping.sheets' : 'people.shopping.none')),
      kept.length > 0 ? make('ul', { class: 'library' }, kept.map((sheet, i) => make('li', null,
        make('span', null, sheet.title), lost.includes(sheet.title) ? make('small', null, say('people.shopping.lost')) : null,
        button(say('form.takeOut'), () => this.#drop(i), { class: 'plain', 'aria-label': say('people.shopping.drop', { title: sheet.title }) })))) : null,
      this.#bench ? this.#benchChoice() : null,
      sheets.length > 0 && plan?.menu.some(line => line.formulas) ? this.#choice('shopping-mixes', 'countsMixes', say('people.shopping.mixes')) : null,
    ].filter(Boolean));
    if (held && !document.activeElement?.id) {
      document.getElementById(held)?.focus();
    }
  }

  #benchChoice() {
    if (this.#isKept()) {
      return make('p', { class: 'hint' }, say('people.shopping.benchKept'));
    }
    return make('div', { class: 'beside' },
      this.#choice('shopping-bench', 'countsBench', say('people.shopping.bench', { title: this.#bench.title })),
      this.#kept().length < mostSheets - 1 ? button(say('people.shopping.keep'), () => this.#keep(), { class: 'plain', id: 'shopping-keep' }) : null);
  }

  #choice(id, member, text) {
    const box = make('input', { type: 'checkbox', id });
    box.checked = this.#written[member] === 'yes';
    box.addEventListener('change', () => {
      this.#written[member] = box.checked ? 'yes' : 'no';
      this.#onChange();
    });
    return make('label', { class: 'choice' }, box, make('span', null, text));
  }

  #keep() {
    this.#written.sheets = [...this.#kept(), this.#bench];
    this.#onChange();
  }

  #drop(i) {
    this.#written.sheets = this.#kept().filter((_, at) => at !== i);
    this.#onChange();
  }

  #kept() {
    return this.#written.sheets.filter(sheet => sheet.body);
  }

  #isKept() {
    return this.#kept().some(sheet => sheet.body === this.#bench?.body);
  }

  // Undefined where one of them is on this device no more.
  async #formulasOf({ treatments }) {
    const found = {};
    for (const id of treatments.map(treatment => treatment.formulaId).filter(Boolean)) {
      const formula = await this.#app.library.get(this.#app.library.nowCalled(id));
      if (!formula) {
        this.#app.library.fetch(id);
        return undefined;
      }
      found[id] = formula;
    }
    return found;
  }
}

function titleOf({ treatments, greenWeight }, pieces) {
  return `${treatments.map(treatment => treatment.name).join(', ')}: ${sayCount('sheet.pieces', pieces.length, { weight: meat(greenWeight, scaleOf(pieces)) })}`;
}
