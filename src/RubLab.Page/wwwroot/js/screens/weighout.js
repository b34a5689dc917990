// Weighing out: one step at a time, for one clean knuckle at arm's length.
import { button, make } from '../dom.js';
import { stayAwake } from '../weighout/awake.js';
import { progressOf } from '../weighout/offers.js';
import { begin, find, keep, markOf } from '../weighout/state.js';
import { aloud, leftInBowls, stepsOf } from '../weighout/steps.js';
import { showNumber } from '../words/numbers.js';
import { amount } from '../words/show.js';
import { say } from '../words/texts.js';

// No step is done sooner: a second tap within it was meant for the step before.
const settleMs = 400;

let app;
let section;
let live;
let settled;
let weighout;
let asksAboutSheet = false;

export async function open(element, shared) {
  app = shared;
  section = make('div', { class: 'stage' });
  // One place that stays, so that a screen reader says what is put into it.
  live = make('p', { class: 'unseen', role: 'status', id: 'step-aloud' });
  element.append(section, live);
  return { show, leave: () => {
    stayAwake(false);
    globalThis.speechSynthesis?.cancel();
  } };
}

async function show(which) {
  await app.ready;
  if (which === 'new') {
    const sheet = await app.sheet?.();
    if (!sheet?.answer) {
      app.go('bench');
      return;
    }
    await start(sheet);
    if (location.hash === '#/weigh-out/new') {
      history.replaceState(null, '', `#/weigh-out/${weighout.id}`);
    }
  } else {
    weighout = await find(which);
    if (!weighout) {
      section.replaceChildren(make('p', null, say('weighout.gone')), make('a', { class: 'plain', href: '#/bench' }, say('weighout.back')));
      return;
    }
    const sheet = await app.sheet?.();
    asksAboutSheet = !weighout.isEnded && sheet?.answer !== undefined && markOf(sheet) !== weighout.mark && weighout.keptMark !== markOf(sheet);
  }
  stayAwake(true);
  render();
}

async function start(sheet) {
  const begun = await begin(sheet, stepsOf(sheet));
  weighout = begun.weighout;
  asksAboutSheet = false;
  if (!begun.isKept) {
    app.notices.show('storage', say('app.not-kept'));
  }
}

function render() {
  const { steps, at, done } = weighout;
  section.replaceChildren(...(asksAboutSheet ? askAboutSheet() : at >= steps.length ? theEnd() : oneStep(steps[at], at, done)));
  section.querySelector('[data-focus]')?.focus({ preventScroll: true });
}

function oneStep(step, at, done) {
  const { steps } = weighout;
  const said = aloud(step);
  const next = steps[at + 1];
  speak(said);
  return [
    make('div', { class: 'where' },
      make('p', null, say('weighout.where', { name: step.name, number: at + 1, of: steps.length })),
      make('progress', { max: steps.length, value: at, 'aria-label': say('weighout.progress') })),
    make('div', { class: `now ${step.kind}` },
      make('p', { class: 'what' }, step.what, step.note ? make('small', null, step.note) : null),
      step.amount ? make('p', { class: `amount${sizeOf(step.amount)}` }, step.amount) : null,
      step.shows && step.shows !== step.amount ? make('p', { class: 'shows' }, say('step.shows', { total: step.shows })) : null,
      step.kind === 'cup' ? make('p', { class: 'shows' }, say('step.cup.how')) : null,
      step.kind === 'meat' ? cupsOn(step) : null,
      done[at] ? make('p', { class: 'flag' }, say(`weighout.was.${done[at]}`)) : null),
    button(say(`step.done.${step.kind}`), () => move(at, 'done'), { class: 'done', 'data-focus': true, id: 'step-done' }),
    make('div', { class: 'aside' },
      button(say('weighout.stepBack'), () => back(), { disabled: at === 0 }),
      button(say('weighout.skip'), () => move(at, 'skipped')),
      'speechSynthesis' in globalThis ? button(say(app.settings.aloud ? 'weighout.quiet' : 'weighout.aloud'), toggleAloud, { 'aria-pressed': String(app.settings.aloud) }) : null,
      make('a', { class: 'plain', href: '#/bench' }, say('weighout.leave'))),
    next ? make('p', { class: 'next' }, say('weighout.next', { what: `${next.what} ${next.amount}`.trim() })) : null,
  ];
}

// As large as it fits.
function sizeOf({ length }) {
  return length > 9 ? ' longest' : length > 6 ? ' long' : '';
}

// Which cup goes on which piece; those skipped are named as such.
function cupsOn(step) {
  const cups = weighout.steps.map((other, i) => ({ ...other, was: weighout.done[i] })).filter(other => other.kind === 'cup' && other.treatment === step.treatment);
  return make('ul', { class: 'cups' }, cups.map(cup => make('li', null,
    make('strong', null, cup.what), ' ', cup.was === 'skipped' ? say('step.cup.skipped') : cup.amount, make('small', null, cup.note))));
}

function theEnd() {
  const left = leftInBowls(weighout.steps, weighout.done);
  const skipped = weighout.steps.filter((_, i) => weighout.done[i] === 'skipped');
  speak(say('weighout.end'));
  return [
    make('div', { class: 'now' },
      make('h2', { tabindex: '-1', 'data-focus': true }, say('weighout.end')),
      make('ul', { class: 'left' }, left.map(({ name, value, unit }) => make('li', null,
        say(value > 0 ? 'weighout.left' : value < 0 ? 'weighout.short' : 'weighout.none', { name, amount: amount({ value: Math.abs(value), unit }) })))),
      left.some(bowl => !bowl.isLiquid) ? make('p', null, say('weighout.leftHow')) : null,
      left.some(bowl => bowl.isLiquid) ? make('p', null, say('weighout.leftLiquid')) : null,
      skipped.length > 0 ? make('div', null,
        make('p', { class: 'flag' }, say('weighout.skipped', { count: showNumber(skipped.length) })),
        make('ul', null, skipped.map(step => make('li', null, `${step.what} ${step.amount}`.trim())))) : null),
    button(say('weighout.finish'), finish, { class: 'done' }),
    make('div', { class: 'aside' }, button(say('weighout.stepBack'), () => back())),
  ];
}

function askAboutSheet() {
  const { count, of } = progressOf(weighout);
  return [
    make('div', { class: 'now' },
      make('h2', { tabindex: '-1', 'data-focus': true }, say('weighout.changed')),
      make('p', null, say('weighout.changed.how', { title: weighout.title, count, of }))),
    button(say('weighout.changed.old'), async () => {
      weighout.keptMark = markOf(await app.sheet());
      asksAboutSheet = false;
      await keep(weighout);
      render();
    }, { class: 'done' }),
    make('div', { class: 'aside' },
      button(say('weighout.changed.new'), () => app.go('weigh-out', 'new')),
      make('a', { class: 'plain', href: '#/bench' }, say('weighout.back'))),
  ];
}

async function move(at, how) {
  weighout.done[at] = how;
  weighout.at = at + 1;
  await keepAndRender();
}

async function back() {
  weighout.at = Math.max(0, weighout.at - 1);
  await keepAndRender();
}

async function finish() {
  weighout.isEnded = true;
  await keep(weighout);
  app.go('bench');
}

// On the device first, on the screen after: what is shown as done stays done.
async function keepAndRender() {
  if (!await keep(weighout)) {
    app.notices.show('storage', say('app.not-kept'));
  }
  render();
  settle();
}

// Taps go nowhere for a moment; keys and screen readers are not held up.
function settle() {
  section.classList.add('settling');
  clearTimeout(settled);
  settled = setTimeout(() => section.classList.remove('settling'), settleMs);
}

function toggleAloud() {
  app.settings.set('aloud', !app.settings.aloud);
  if (!app.settings.aloud) {
    globalThis.speechSynthesis.cancel();
  }
  render();
}

function speak(sentence) {
  live.textContent = sentence;
  if (app.settings.aloud && globalThis.speechSynthesis) {
    globalThis.speechSynthesis.cancel();
    const words = new SpeechSynthesisUtterance(sentence);
    words.lang = 'en';
    globalThis.speechSynthesis.speak(words);
  }
}
