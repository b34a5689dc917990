// Guests and a menu: what to buy for them, the plan's sheet for the bench, and back from meat to portions.
import { showFaults } from '../bench/faults.js';
import { byId, make } from '../dom.js';
import * as engine from '../engine.js';
import { cutOptions, named } from '../forms/choices.js';
import { fieldsOf, formOf, keep, take } from '../forms/workbench.js';
import { loadWritten } from '../kept/written.js';
import { Feeds } from '../people/feeds.js';
import { menuOf } from '../people/menu.js';
import { planOf } from '../people/plan.js';
import { appetites, blank, currencyOf, fieldOf, readPeople } from '../people/request.js';
import { Shopping } from '../people/shopping.js';
import { boughtIn } from '../words/bought.js';
import { say } from '../words/texts.js';

let app;
let section;
let form;
let written;
let menu;
let shopping;
let feeds;
let cuts;
let offered = '';

export async function open(element, shared) {
  app = shared;
  section = element;
  await app.ready;
  written = loadWritten('people', blank);
  cuts = cutOptions();
  menu = menuOf(written.menu, {
    cuts, formulas: () => named(app.library.items),
    unit: () => boughtIn(app.settings), recorded: cut => app.yields.of({ cut })?.records ?? [],
  }, changed);
  shopping = new Shopping(app, written, cutName, changed);
  feeds = new Feeds(app, cuts, () => currencyOf(written, app.settings));
  const { number, text, choice } = fieldsOf('people', written);
  form = formOf(say('screen.people'), takeFrom,
    make('h3', null, say('people.guests')),
    make('div', { class: 'pair' }, appetites.map(appetite => number(appetite))),
    menu.element,
    make('div', { class: 'pair' }, number('reserve'), choice('buyFor', ['typical', 'safe'])),
    text('currency', { autocapitalize: 'characters', maxlength: 3 }));
  section.append(make('h2', null, say('screen.people')), make('div', { class: 'workbench' }, form,
    make('div', { class: 'outcome' }, make('div', { class: 'outcome', id: 'people-outcome' }), shopping.element), feeds.element), shopping.page);
  app.library.watch(() => !section.hidden && update());
  app.yields.watch(() => !section.hidden && update());
  return { show: update };
}

function takeFrom(control) {
  const { member, i } = take(control, written, 'menu');
  if (member === 'cut') {
    menu.offerMethods(i);
  }
  changed();
}

function changed() {
  keep(app, 'people', written);
  update();
}

async function update() {
  const unit = boughtIn(app.settings);
  const offers = JSON.stringify([unit, app.library.items.map(({ id, name }) => [id, name]), app.yields.items]);
  if (offers !== offered && !form.contains(document.activeElement)) {
    offered = offers;
    menu.build();
  }
  byId('people-currency-hint').textContent = app.settings.currency ? say('people.currency.set', { currency: app.settings.currency }) : say('people.currency.hint');
  const read = readPeople(written, app.library, app.settings);
  const formulas = {};
  for (const { formulaId } of (read.request?.menu ?? []).flatMap(line => line.formulas ?? [])) {
    const stored = await app.library.get(formulaId);
    stored ? formulas[formulaId] = stored : app.library.fetch(formulaId);
  }
  const { ok, errors = [] } = read.request ? engine.planPurchase(read.request, formulas) : {};
  showFaults(form, read.faults.concat(errors.map(({ pointer, detail }) => ({ field: fieldOf(pointer, read), detail }))));
  const isFaulty = read.faults.length + errors.length > 0;
  byId('people-outcome').replaceChildren(...(ok ? planOf(ok, cutName, unit, takeToBench) : [make('p', null, say(isFaulty ? 'people.mend' : 'people.empty'))]));
  await shopping.update(ok ? read.request : undefined, formulas);
  await feeds.update();
}

function cutName(id) {
  return cuts.find(cut => cut.value === id)?.text ?? id;
}

function takeToBench(sheet) {
  app.takePlan(sheet);
  app.go('bench');
}
