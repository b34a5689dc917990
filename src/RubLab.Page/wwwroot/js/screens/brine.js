// A liquid to inject, or to soak in: how strong it is, what to weigh, what it leaves in the meat.
import { showFaults } from '../bench/faults.js';
import { outcomeOf, refusedOf } from '../brine/outcome.js';
import { blank, fieldOf, readBrine } from '../brine/request.js';
import { linesOf } from '../brine/rows.js';
import { productOptions } from '../cure/products.js';
import { isRefused, overGramsOf, refusalsOf } from '../cure/refusal.js';
import { byId, make } from '../dom.js';
import * as engine from '../engine.js';
import { cutOptions } from '../forms/choices.js';
import { bareHint, fieldsOf, formOf, keep, showBareUnit, take, workbenchOf } from '../forms/workbench.js';
import { loadWritten } from '../kept/written.js';
import { showEstimate, showNumber } from '../words/numbers.js';
import { meat } from '../words/show.js';
import { say } from '../words/texts.js';

let app;
let section;
let written;
let lines;

export async function open(element, shared) {
  app = shared;
  section = element;
  await app.ready;
  written = loadWritten('brine', blank);
  build();
  app.own.watch(update);
  return { show: update };
}

function build() {
  const fields = fieldsOf('brine', written);
  const { number, select, weights, choice, pair } = fields;
  const isSoak = written.kind === 'soak';
  lines = linesOf(written.rows, changed);
  const form = formOf(say('screen.brine'), takeFrom,
    choice('kind', ['injection', 'soak']),
    select('cut', { label: say('form.cut'), options: cutOptions() }),
    weights('meat', { hint: bareHint(say('brine.meat.hint', { each: showNumber(2.5) })) }),
    isSoak ? pair('liquid', 'time') : pair('pump', 'retained'),
    pair('temperature', 'bowl'),
    number('loss'),
    lines.element,
    number('target'),
    isSoak ? soakMore(fields) : weighedBack(fields),
    fold('brine.product', ['product', 'skin'],
      select('product', { label: say('cure.product'), options: productOptions(), hint: say('cure.product.hint') }),
      number('skin', { label: say('cure.skin'), hint: say('cure.skin.hint') })));
  section.replaceChildren(make('h2', null, say('screen.brine')), workbenchOf('brine', form));
}

// What the scale says after the pump takes the place of what was planned.
function weighedBack({ weights }) {
  const members = ['green', 'pumped', 'drained'];
  return fold('brine.weighedBack', members, make('p', { class: 'hint' }, say('brine.weighedBack.how')), members.map(member => weights(member, { rows: 2 })));
}

function soakMore({ number, choice, pair }) {
  return fold('brine.soakMore', ['thickness', 'saltInMeat', 'vessel'],
    make('div', { class: 'pair' }, number('thickness'), choice('shape', ['slab', 'cylinder'])),
    pair('saltInMeat', 'vessel'));
}

function fold(title, members, ...fields) {
  return make('details', { open: members.some(member => written[member].trim() !== '') }, make('summary', null, say(title)), fields);
}

function takeFrom(control) {
  const { member, i } = take(control, written, 'rows');
  if (member === 'ingredient') {
    written.rows[i].form = '';
    lines.show(member, i);
  } else if (member === 'kind') {
    build();
    byId('brine-kind').focus();
  }
  changed();
}

function changed() {
  keep(app, 'brine', written);
  update();
}

function update() {
  showBareUnit(section, app.settings);
  byId('brine-skin').closest('.field').hidden = written.product !== 'bacon';
  const read = readBrine(written, app.settings);
  const { ok, errors = [] } = read.request ? engine.computeBrine(read.request) : {};
  const refused = isRefused(errors);
  const faults = refused ? refusalsOf(errors, 'brine', written.rows, read.rows) : errors.map(({ pointer, detail }) => ({ field: visible(fieldOf(pointer, read.rows)), detail }));
  showFaults(section, read.faults.concat(faults), lines.choose);
  byId('brine-outcome').replaceChildren(...shown(ok, read, refused ? errors : [], read.faults.length + errors.length > 0));
  byId('brine-said').textContent = ok ? say('brine.said', { made: meat(ok.made.mass), percent: showEstimate(ok.strength.percent) }) : refused ? say('cure.refused') : '';
}

function shown(ok, read, refusals, isFaulty) {
  if (ok) {
    return outcomeOf(ok, read);
  }
  if (refusals.length > 0) {
    return refusedOf(engine.computeBrine({ ...read.request, purpose: 'check' }).ok, overGramsOf(refusals));
  }
  return [make('p', null, say(isFaulty ? 'brine.mend' : 'brine.empty'))];
}

function visible(id) {
  return byId(id) ? id : 'brine-kind';
}
