// The list of screens. A row is all a screen needs to be reached; its module is loaded when it is first opened.
// Those with a place stand at the head of the page, `path` always in sight, `more` on a narrow screen a tap away; the others are
// reached from where they belong.
import { byId, make } from './dom.js';
import { itemsOf, markOpen } from './masthead.js';
import { say } from './words/texts.js';

export const screens = [
  { id: 'bench', place: 'path', load: () => import('./screens/bench.js') },
  { id: 'paper', place: 'path', load: () => import('./screens/paper.js') },
  { id: 'formulas', place: 'more', load: () => import('./screens/formulas.js') },
  { id: 'convert', place: 'more', load: () => import('./screens/convert.js') },
  { id: 'brine', place: 'more', load: () => import('./screens/brine.js') },
  { id: 'cure', place: 'more', load: () => import('./screens/cure.js') },
  { id: 'time', place: 'more', load: () => import('./screens/time.js') },
  { id: 'sauce', place: 'more', load: () => import('./screens/sauce.js') },
  { id: 'people', place: 'more', load: () => import('./screens/people.js') },
  { id: 'own', place: 'more', load: () => import('./screens/own.js') },
  { id: 'pairing', load: () => import('./screens/pairing.js') },
  { id: 'formula', load: () => import('./screens/formula.js') },
  { id: 'weigh-out', load: () => import('./screens/weighout.js') },
];

const opened = new Map();
let current;
let turns = 0;

/**
 * Shows the screen the address names, `#/id/rest`, and follows it from then on. A module exports
 * `open(section, app)`, which fills its section once and gives `{ show?(rest), leave?(), title?() }`.
 */
export async function followAddress(app) {
  byId('screens').replaceChildren(...itemsOf(screens, () => show(app, true)));
  window.addEventListener('hashchange', () => isAddress() && show(app, true));
  // The bench is what the others work from, whichever is shown first.
  await first(screens[0], app);
  await show(app, false);
}

/** Opens a screen. */
export function go(id, rest = '') {
  const address = `#/${id}${rest && `/${encodeURIComponent(rest)}`}`;
  if (location.hash === address) {
    window.dispatchEvent(new HashChangeEvent('hashchange'));
  } else {
    location.hash = address;
  }
}

function isAddress() {
  return location.hash === '' || location.hash.startsWith('#/');
}

async function show(app, takesFocus) {
  const turn = ++turns;
  const [, id, rest = ''] = (isAddress() ? location.hash : '').split('/');
  const screen = screens.find(candidate => candidate.id === id) ?? screens[0];
  const wanted = await first(screen, app).catch(fault => {
    console.error(fault);
    app.notices.show('screen', say('app.screen-failed', { screen: say(`screen.${screen.id}`) }));
  });
  // Another screen may have been chosen while this one was on its way.
  if (!wanted || turn !== turns) {
    return;
  }
  if (current && current !== wanted) {
    current.leave?.();
    current.section.hidden = true;
  }
  current = wanted;
  wanted.section.hidden = false;
  document.body.dataset.screen = screen.id;
  byId('skip').textContent = say(screen.id === 'bench' ? 'app.skip' : 'app.skip.screen');
  document.title = screen.id === 'bench' ? say('app.name') : `${say(`screen.${screen.id}`)} – ${say('app.name')}`;
  markOpen(screen);
  await wanted.show?.(decodeURIComponent(rest));
  if (takesFocus) {
    window.scrollTo(0, 0);
    (wanted.section.querySelector('[data-focus]') ?? wanted.section).focus({ preventScroll: true });
  }
}

// Once, however often it is asked for while it is on its way; one that failed is tried again.
function first(screen, app) {
  if (!opened.has(screen.id)) {
    const opening = open(screen, app);
    opened.set(screen.id, opening);
    opening.catch(() => opened.delete(screen.id));
  }
  return opened.get(screen.id);
}

async function open(screen, app) {
  const module = await screen.load();
  const section = make('section', { id: `screen-${screen.id}`, class: 'screen', tabindex: '-1', hidden: true, 'aria-label': say(`screen.${screen.id}`) });
  byId('main').append(section);
  try {
    return { ...await module.open(section, app), section };
  } catch (fault) {
    section.remove();
    throw fault;
  }
}
