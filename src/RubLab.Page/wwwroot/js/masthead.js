// The row of screens at the head of the page. On a narrow screen it is one line, and its last word opens the rest.
import { button, byId, make } from './dom.js';
import { say } from './words/texts.js';

/**
 * @param {object[]} screens the list of them.
 * @param {() => void} stay called when the one that is open is chosen again.
 * @returns {Element[]} the items of the row.
 */
export function itemsOf(screens, stay) {
  const linksOf = place => screens.filter(screen => screen.place === place).map(({ id }) =>
    make('li', null, make('a', { href: `#/${id}`, id: `to-${id}` }, say(`screen.${id}`))));
  const more = button(say('app.more'), () => open(!isOpen()), { id: 'more-screens', 'aria-controls': 'screens-more', 'aria-expanded': 'false' });
  const rest = make('li', { class: 'rest' }, more, make('ul', { id: 'screens-more' }, linksOf('more')));
  rest.addEventListener('keydown', ({ key }) => {
    if (key === 'Escape' && isOpen()) {
      open(false);
      more.focus();
    }
  });
  // The address does not change then, so nothing else would close it.
  rest.addEventListener('click', ({ target }) => target.hash === location.hash && stay());
  return [...linksOf('path'), rest];
}

/** Marks the screen that is open, and closes the rest. */
export function markOpen({ id, place }) {
  const isAmongRest = place === 'more';
  byId('more-screens').textContent = isAmongRest ? say('app.more.at', { screen: say(`screen.${id}`) }) : say('app.more');
  mark(byId('more-screens'), isAmongRest && 'true');
  for (const link of byId('screens').querySelectorAll('a')) {
    mark(link, link.id === `to-${id}` && 'page');
  }
  open(false);
}

function mark(element, current) {
  current ? element.setAttribute('aria-current', current) : element.removeAttribute('aria-current');
}

function isOpen() {
  return byId('more-screens').getAttribute('aria-expanded') === 'true';
}

function open(isWanted) {
  byId('more-screens').setAttribute('aria-expanded', isWanted);
}
