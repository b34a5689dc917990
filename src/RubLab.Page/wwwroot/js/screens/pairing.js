// Pairing: the code that lets this device in, or the devices that were let in.
import { button, make } from '../dom.js';
import { devicesOf } from '../pairing/devices.js';
import { entryOf } from '../pairing/entry.js';
import { moment } from '../words/numbers.js';
import { say } from '../words/texts.js';

let app;
let section;
let shown;

export async function open(element, shared) {
  app = shared;
  section = element;
  app.access.watch(() => !section.hidden && build());
  return {
    show: () => {
      build();
      return app.access.ask();
    },
  };
}

function build() {
  const { state, session } = app.access;
  const now = JSON.stringify([state, session]);
  if (now === shown) {
    return;
  }
  shown = now;
  const mayPair = state === 'open' || session?.scopes.includes('pair');
  const devices = mayPair ? devicesOf(() => app.access.ask()) : null;
  section.replaceChildren(make('h2', null, say('screen.pairing')), make('div', { class: 'workbench' }, make('div', { class: 'outcome' }, ...parts(state, session)), devices?.element ?? ''));
  devices?.update();
}

function parts(state, session) {
  switch (state) {
    case 'out':
      return [entryOf(app)];
    case 'in':
      return [
        make('p', { id: 'pairing-state', role: 'status' }, make('strong', null, say('pairing.in', { name: session.name }))),
        make('p', null, say('pairing.until', { when: moment(session.expiresAt) })),
        session.warning ? make('p', { class: 'flag' }, session.warning) : '',
        button(say('pairing.signOut'), () => app.access.leave().catch(() => app.access.ask()), { class: 'plain' }),
      ];
    case 'open':
      return [make('p', { id: 'pairing-state' }, say('pairing.open'))];
    default:
      return [make('p', { id: 'pairing-state', role: 'status' }, say(state === 'offline' ? 'pairing.offline' : 'pairing.checking')),
        button(say('pairing.again'), () => app.access.ask(), { class: 'plain' })];
  }
}
