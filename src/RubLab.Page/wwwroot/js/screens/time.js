// How far the salt gets overnight: one piece, how it is salted, and the hours it has.
import { showFaults } from '../bench/faults.js';
import { byId, make } from '../dom.js';
import * as engine from '../engine.js';
import { cutOptions, orNone, worded } from '../forms/choices.js';
import { bareHint, fieldsOf, formOf, keep, showBareUnit, take, workbenchOf } from '../forms/workbench.js';
import { loadWritten } from '../kept/written.js';
import { fromBench } from '../time/bench.js';
import { inWords, outcomeOf } from '../time/outcome.js';
import { blank, fieldOf, fieldOfLiquid, hasSides, methods, readTime, shapes } from '../time/request.js';
import { stagesOf } from '../time/stages.js';
import { showNumber } from '../words/numbers.js';
import { quantity } from '../words/show.js';
import { say } from '../words/texts.js';

const settleMs = 80;
const leastWide = 520;

let app;
let section;
let written;
let scheduled;

export async function open(element, shared) {
  app = shared;
  section = element;
  await app.ready;
  written = loadWritten('time', blank);
  build();
  // Its curves are drawn for the room they have.
  window.addEventListener('resize', () => !section.hidden && schedule());
  return { show };
}

async function show(treatment) {
  if (treatment !== '') {
    history.replaceState(null, '', '#/time');
    takeFromBench(fromBench(await app.sheet(), Number(treatment)));
  }
  update();
}

// What stood here can be had back.
function takeFromBench(taken) {
  if (!taken) {
    return;
  }
  const before = structuredClone(written);
  put({ ...written, ...taken });
  if (!before.weight && !before.thickness) {
    return;
  }
  app.notices.offerBack('time-taken', say('time.taken'), () => put(before));
}

function put(all) {
  written = all;
  build();
  changed();
}

function build() {
  const { text, select, choice } = fieldsOf('time', written);
  const form = formOf(say('screen.time'), takeFrom,
    choice('method', methods),
    select('cut', { label: say('form.cut'), options: cutOptions() }),
    make('div', { class: 'pair' }, text('weight', { hint: bareHint(say('time.weight.hint', { each: showNumber(3.6) })) }), text('thickness')),
    choice('faces', ['open', 'closed']),
    written.method === 'dry-brine' ? text('salt') : null,
    written.method === 'soak' ? [make('div', { class: 'pair' }, text('liquid'), text('strength')), text('meat')] : null,
    stagesOf(written.stages, changed),
    make('details', { open: Boolean(written.shape || written.width || written.length) }, make('summary', null, say('time.more')),
      select('shape', { options: orNone(worded(shapes, 'time.shape'), 'time.shape.cut') }),
      hasSides(written) ? make('div', { class: 'pair' }, text('width'), text('length')) : null));
  section.replaceChildren(make('h2', null, say('time.title')), workbenchOf('time', form));
}

function takeFrom(control) {
  const { member } = take(control, written, 'stages');
  if (member === 'method' || member === 'shape') {
    build();
    byId(`time-${member}`).focus();
  }
  changed();
}

function changed() {
  keep(app, 'time', written);
  schedule();
}

function schedule() {
  clearTimeout(scheduled);
  scheduled = setTimeout(update, settleMs);
}

function update() {
  clearTimeout(scheduled);
  showBareUnit(section, app.settings);
  const read = readTime(written, app.settings);
  const liquid = read.brine ? engine.computeBrine(read.brine) : {};
  const request = liquid.ok ? { ...read.request, liquidRatio: liquid.ok.soak.waterRatio } : read.request;
  const faults = read.faults.concat((liquid.errors ?? []).map(({ pointer, detail }) => ({ field: visible(fieldOfLiquid(pointer)), detail })));
  const isWhole = faults.length === 0 && !read.missing;
  const { ok, errors = [] } = engine.computeSalting(request);
  // What is not written yet, or cannot be read, is not told a second time as missing.
  faults.push(...errors.filter(({ code }) => isWhole || code !== 'required').map(({ pointer, detail }) => ({ field: visible(fieldOf(pointer)), detail })));
  showFaults(section, faults);
  const answer = faults.length === 0 && !read.missing ? ok : undefined;
  byId('time-outcome').replaceChildren(...(answer ? outcomeOf(answer, contextOf(read, request, liquid)) : [
    make('p', null, say(faults.length > 0 ? 'time.mend' : `time.missing.${read.missing}`))]));
  byId('time-said').textContent = answer ? say('time.said', { time: quantity(answer.time), depth: inWords(answer.depth) }) : '';
}

function contextOf({ grams }, request, { ok }) {
  const isNarrow = byId('time-outcome').clientWidth < leastWide;
  return {
    plots: ['profile', 'uptake'].map(plot => engine.plotSalting(request, plot, isNarrow)),
    even: ok?.soak.evenPerKgGreen ?? (grams && { low: grams, typical: grams, high: grams, unit: 'g/kg' }),
    isInches: ['lb', 'oz'].includes(app.settings.bareUnit),
  };
}

function visible(id) {
  return byId(id) ? id : 'time-method';
}
