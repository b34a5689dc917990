// A kitchen's own numbers: what its cups hold, what cooking leaves, its scales, its bowl, how it measures.
import { make } from '../dom.js';
import { cupsOf } from '../own/cups.js';
import { measuringOf } from '../own/measuring.js';
import { scalesOf } from '../own/scales.js';
import { yieldsOf } from '../own/yields.js';
import { say } from '../words/texts.js';

export async function open(section, app) {
  await app.ready;
  const cups = cupsOf(app);
  const yields = yieldsOf(app);
  const devices = make('section', { class: 'card' },
    make('h3', null, say('pairing.devices')),
    make('p', { class: 'hint' }, say('pairing.devices.how')),
    make('a', { class: 'plain', href: '#/pairing' }, say('pairing.devices.go')));
  section.append(make('h2', null, say('screen.own')), make('div', { class: 'workbench' },
    make('div', { class: 'outcome' }, cups.element, yields.element),
    make('div', { class: 'outcome' }, scalesOf(app), measuringOf(app), devices)));
  return { show: () => {
    cups.show();
    yields.show();
  } };
}
