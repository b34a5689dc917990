// One list of what to buy: for the sheets, and the meat of the plan.
import { showFaults } from '../bench/faults.js';
import { findingsOf } from '../bench/remarks.js';
import { button, byId, field, make, numberInput } from '../dom.js';
import * as engine from '../engine.js';
import { Reading, withoutBlanks } from '../forms/reading.js';
import { boughtIn, weightIn } from '../words/bought.js';
import { say, sayCount } from '../words/texts.js';
import { costInWords, money } from './money.js';
import { currencyOf } from './request.js';
import { Shelf } from './shelf.js';
import { listPage } from './shoppingpage.js';
import { Sources } from './sources.js';

const nothing = { ingredients: [], meat: [], findings: [] };

export class Shopping {
  #app;
  #written;
  #sources;
  #shelf;
  #cutName;

  /** @param {object} written changed in place. */
  constructor(app, written, cutName, onChange) {
    this.#app = app;
    this.#written = written;
    this.#cutName = cutName;
    this.#sources = new Sources(app, written, onChange);
    this.#shelf = new Shelf(app.settings, written, onChange);
    this.page = make('article', { class: 'page shopping-page' });
    this.element = make('section', { class: 'card', id: 'shopping', 'aria-label': say('people.shopping') },
      make('h3', null, say('people.shopping')),
      this.#sources.element,
      make('p', { class: 'flag', id: 'shopping-wrong', hidden: true }),
      make('ul', { class: 'buys', id: 'shopping-meat' }),
      this.#shelf.element,
      field('people-portions', say('people.portionsFor'), numberInput('portions', written.portions), { hint: say('people.portionsFor.hint') }),
      make('div', { id: 'shopping-total', role: 'status' }),
      make('div', { class: 'doings' }, button(say('people.shopping.print'), () => window.print(), { class: 'plain', id: 'shopping-print', hidden: true })),
      make('div', { id: 'shopping-findings' }));
    byName(this.element, 'portions').addEventListener('input', ({ target }) => {
      written.portions = target.value;
      onChange();
    });
  }

  /**
   * @param {object | undefined} plan the body of a purchase plan.
   * @param {object} formulas the stored ones it names, by id.
   */
  async update(plan, formulas) {
    const { sheets, formulas: ofSheets, lost } = await this.#sources.read();
    this.#sources.show(plan, sheets, lost);
    const meatOnly = plan && { ...plan, menu: plan.menu.map(({ formulas: _, ...line }) => line) };
    const request = { batchSheets: sheets.length > 0 ? sheets : undefined, purchasePlans: plan && [this.#sources.takesMixes(sheets) ? plan : meatOnly] };
    const known = { ...formulas, ...ofSheets };
    const isEmpty = sheets.length === 0 && !plan;
    byName(this.element, 'portions').closest('.field').hidden = isEmpty || Boolean(plan);
    const bare = isEmpty ? {} : engine.listShopping(withoutBlanks(request), known);
    byId('shopping-wrong').textContent = (bare.errors ?? []).map(error => error.detail).join(' ');
    byId('shopping-wrong').hidden = !bare.errors;
    const items = bare.ok?.ingredients ?? [];
    this.#shelf.build(items);
    this.#show(bare.ok ? this.#priced(request, known, bare.ok, plan) : nothing);
  }

  #priced(request, known, bare, plan) {
    const { packs, stock, faults, fieldOf } = this.#shelf.read(bare.ingredients, currencyOf(this.#written, this.#app.settings));
    const reading = new Reading(this.#app.settings);
    const portions = plan ? undefined : reading.count('people-portions', this.#written.portions);
    const { ok, errors = [] } = engine.listShopping(withoutBlanks({ ...request, packs, stock, portions }), known);
    const places = errors.map(({ pointer, detail }) => ({ field: fieldOf(pointer) ?? 'people-portions', detail }));
    showFaults(this.element, [...faults, ...reading.faults, ...places]);
    return ok ?? bare;
  }

  #show(list) {
    const unit = boughtIn(this.#app.settings);
    const { ingredients, meat, outlay, used, findings } = list;
    this.#shelf.show(ingredients);
    byId('shopping-meat').replaceChildren(...meat.map(line => make('li', null, make('p', null, make('strong', null, this.#cutName(line.cut)), ' ',
      [line.pieces === undefined ? '' : sayCount('people.pieces', line.pieces), weightIn(line.purchaseWeight, unit), line.outlay ? money(line.outlay) : ''].filter(Boolean).join(', ')))));
    byId('shopping-total').replaceChildren(...[
      outlay ? make('p', { class: 'title', id: 'shopping-outlay' }, say('people.outlay', { total: money(outlay) })) : null,
      used ? make('p', { id: 'shopping-used' }, say('people.used', { total: money(used.total), each: costInWords(used, unit, 'bought') })) : null,
    ].filter(Boolean));
    byId('shopping-print').hidden = ingredients.length + meat.length === 0;
    byId('shopping-findings').replaceChildren(...(findings.length > 0 ? [findingsOf(findings)] : []));
    listPage(this.page, list, { unit, cutName: this.#cutName, paper: this.#app.settings.paper });
  }
}

function byName(element, name) {
  return element.querySelector(`[name="${name}"]`);
}
