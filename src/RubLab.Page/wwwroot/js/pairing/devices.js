// A fresh code for another device, and the devices that are paired.
import { button, byId, field, make, selectOf } from '../dom.js';
import { worded } from '../forms/choices.js';
import * as kitchen from '../kept/kitchen.js';
import { moment } from '../words/numbers.js';
import { say } from '../words/texts.js';

const rights = ['read,write', 'read', 'read,write,pair'];

/** @returns {{element: HTMLElement, update: () => Promise<void>}} */
export function devicesOf(onChange) {
  const form = make('form', { class: 'card', novalidate: true, 'aria-label': say('pairing.newCode') },
    make('h3', null, say('pairing.newCode')),
    make('p', { class: 'hint' }, say('pairing.newCode.how')),
    make('div', { class: 'pair' },
      field('device-name', say('pairing.name'), make('input', { name: 'name', autocomplete: 'off', maxlength: 100 })),
      field('device-may', say('pairing.may'), selectOf('may', worded(rights, 'pairing.may'), rights[0]))),
    button(say('pairing.make'), makeCode, { class: 'main', id: 'device-code' }),
    make('div', { id: 'code-shown', role: 'status' }));
  form.addEventListener('submit', event => {
    event.preventDefault();
    makeCode();
  });
  const element = make('div', { class: 'outcome' }, form, make('section', null, make('h3', null, say('pairing.list')), make('div', { id: 'device-list' })));
  return { element, update };

  async function makeCode() {
    try {
      const { code, expiresAt } = await kitchen.newCode({ scopes: byId('device-may').value.split(','), name: byId('device-name').value.trim() || undefined });
      byId('code-shown').replaceChildren(make('p', { class: 'code' }, code), make('p', null, say('pairing.expires', { when: moment(expiresAt) })));
    } catch (fault) {
      byId('code-shown').replaceChildren(make('p', { class: 'fault' }, inWords(fault)));
    }
  }

  async function update() {
    try {
      const devices = await kitchen.listDevices();
      byId('device-list').replaceChildren(devices.length === 0 ? make('p', null, say('pairing.list.none')) : make('ul', { class: 'library' }, devices.map(deviceOf)));
    } catch (fault) {
      byId('device-list').replaceChildren(make('p', { class: 'hint' }, inWords(fault)));
    }
  }

  function deviceOf({ id, name, scopes, lastUsedAt }) {
    return make('li', null,
      make('strong', null, name),
      make('small', null, `${say(`pairing.may.${scopes.join(',')}`)}, ${say('pairing.lastSeen', { when: moment(lastUsedAt) })}`),
      button(say('pairing.unpair'), async () => {
        await kitchen.unpair(id).catch(() => undefined);
        await update();
        onChange();
      }, { class: 'plain', 'aria-label': say('pairing.unpair.of', { name }) }));
  }
}

function inWords(fault) {
  return fault.problem?.errors?.[0]?.detail ?? fault.problem?.detail ?? say(fault.status === undefined ? 'pairing.offline' : 'pairing.refused', { status: fault.status });
}
