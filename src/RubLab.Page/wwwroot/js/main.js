// Starts the page: what all screens share, the screen the address names, the engine, and keeping it all offline.
import { byId, make } from './dom.js';
import * as engine from './engine.js';
import { Access } from './kept/access.js';
import { watchTrouble } from './kept/kept.js';
import { Library } from './kept/library.js';
import { ownDensities } from './kept/owndensities.js';
import { ownYields } from './kept/ownyields.js';
import { Settings } from './kept/settings.js';
import { Notices } from './notices.js';
import { keepOffline } from './offline.js';
import { followAddress, go } from './screens.js';
import { fillTexts, say } from './words/texts.js';

fillTexts(document);

let ready;
const app = {
  settings: new Settings(),
  library: new Library(),
  own: ownDensities(),
  yields: ownYields(),
  notices: new Notices(),
  go,
  /** Resolves when the page can compute. */
  ready: new Promise(resolve => {
    ready = resolve;
  }),
  isReady: false,
};

app.access = new Access(app);
watchTrouble(trouble => app.notices.show('storage', trouble && say(`app.storage.${trouble}`)));
byId('skip').addEventListener('click', event => {
  event.preventDefault();
  (document.body.dataset.screen === 'bench' ? byId('sheet') : document.querySelector('.screen:not([hidden])')).focus();
});
const screen = followAddress(app);
const starting = startEngine();
app.access.start();
app.library.start();
await screen;
await starting;
await keepOffline(take => app.notices.show('version', say('app.new-version'), [{ text: say('app.take-new-version'), act: take }]));

async function startEngine() {
  try {
    const version = await engine.start();
    await Promise.all([app.own.start(), app.yields.start()]);
    app.isReady = true;
    ready();
    byId('edition').textContent = say('app.data', { version });
  } catch (fault) {
    console.error(fault);
    byId('notices').replaceChildren(make('p', { class: 'flag' }, say('app.failed')));
  }
}
