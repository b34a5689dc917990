// The formulas as this device has them: what the server gave, with this kitchen's own edits over it. An edit made
// without the server waits with its key and the revision it was made on; two versions of one formula are both kept.
import { authoredOf } from '../formula/authored.js';
import * as kept from './kept.js';
import * as kitchen from './kitchen.js';

const localPrefix = 'here-';

export class Library {
  #edits = new Map();
  #became = new Map();
  #listeners = new Set();
  #channel = 'BroadcastChannel' in globalThis ? new BroadcastChannel('rublab') : null;

  constructor() {
    this.list = { items: [], fetchedAt: '', state: 'asking' };
  }

  /** @param {() => void} listener called whenever a formula, the list or an edit has changed, in this tab or another. */
  watch(listener) {
    this.#listeners.add(listener);
  }

  /** Offers what is kept, then what the server says, and keeps every formula of it. */
  async start() {
    await this.#read();
    this.list = { ...this.list, ...await kitchen.keptList() };
    this.#tell();
    this.#channel?.addEventListener('message', async () => {
      await this.#read();
      this.list = { ...this.list, ...await kitchen.keptList() };
      this.#tell();
    });
    const refresh = () => this.refresh();
    window.addEventListener('online', refresh);
    document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && refresh());
    await refresh();
  }

  /** Takes what this device keeps by now. */
  async reread() {
    await this.#read();
    this.list = { ...this.list, items: [], ...await kitchen.keptList() };
    this.#tell();
    this.#channel?.postMessage('changed');
  }

  async refresh() {
    await this.#sync();
    this.list = await kitchen.refreshList();
    this.#tell();
    // One after the other, so that a kitchen with many formulas does not press the server.
    if (this.list.state === 'fresh') {
      for (const item of this.list.items) {
        if (!await kitchen.keepFormula(item)) {
          break;
        }
      }
      this.#tell();
    }
  }

  /** Every formula: `{ id, name, kind, revision, state }`, state 'kept', 'waiting', 'conflict' or 'refused'. */
  get items() {
    const listed = this.list.items.map(item => {
      const edit = this.#edits.get(item.id);
      return edit ? { ...item, name: edit.authored.name, kind: edit.authored.kind, state: edit.state } : { ...item, state: 'kept' };
    });
    const own = [...this.#edits.values()].filter(edit => !this.list.items.some(item => item.id === edit.id))
      .map(({ id, authored, base, state }) => ({ id, name: authored.name, kind: authored.kind, revision: base ?? 0, state }));
    return listed.concat(own);
  }

  /** The edit of a formula that the server does not have yet, or undefined. */
  editOf(id) {
    return this.#edits.get(id);
  }

  /** The id a formula has by now: one written without the server gets another when it is stored. */
  nowCalled(id) {
    return this.#became.get(id) ?? id;
  }

  /** A formula to compute with: as edited here, else as the server gave it; undefined where this device has neither. */
  async get(id) {
    const edit = this.#edits.get(id);
    return edit ? { ...edit.authored, id, revision: edit.base ?? 0 } : kitchen.keptFormula(id);
  }

  /** The members of a formula that a cook writes. */
  authored(formula) {
    return authoredOf(formula);
  }

  /** Fetches a formula that this device has not. */
  async fetch(id) {
    const item = this.list.items.find(listed => listed.id === id) ?? { id };
    if (!this.#edits.has(id) && await kitchen.keepFormula(item)) {
      this.#tell();
    }
  }

  /**
   * Keeps a formula on this device and sends it as soon as the server answers.
   * @param {string | null} id null for a new one.
   * @param {object} authored as it would be sent.
   * @param {{base?: number, serial?: string}} from what the cook had before them: the revision, and the key of the edit.
   * @returns {Promise<{id: string, isKept: boolean}>}
   */
  async save(id, authored, from = {}) {
    const isNew = id === null || id.startsWith(localPrefix);
    const target = id ?? localPrefix + newKey();
    const held = isNew ? undefined : await kitchen.keptFormula(target);
    const isKept = await kept.update('edits', target, before => before && before.key !== from.serial
      ? { ...before, state: 'conflict', mine: authored, theirs: before.authored, theirsFrom: 'tab', key: newKey() }
      : {
          id: target, authored, state: 'waiting', key: newKey(), at: new Date().toISOString(),
          base: isNew ? undefined : before?.base ?? from.base ?? held?.revision, etag: before?.etag ?? (from.base === held?.revision ? held?.etag : undefined),
        });
    await this.#changed();
    await this.#sync();
    return { id: this.nowCalled(target), isKept };
  }

  /**
   * Ends a conflict.
   * @param {'mine' | 'theirs' | 'both'} choice
   */
  async settle(id, choice) {
    const edit = this.#edits.get(id);
    if (choice === 'both' || (choice === 'mine' && !edit.theirs)) {
      const copy = localPrefix + newKey();
      await kept.put('edits', copy, { id: copy, authored: this.#named(edit.mine), state: 'waiting', key: newKey(), at: edit.at });
    }
    const fromServer = edit.theirsFrom === 'server';
    const authored = choice === 'mine' ? edit.mine : edit.theirs;
    await kept.update('edits', id, () => !authored || !edit.theirs || (fromServer && choice !== 'mine') ? undefined : {
      id, authored, state: 'waiting', key: newKey(), at: edit.at,
      base: fromServer ? edit.theirsRevision : edit.base, etag: fromServer ? edit.theirsTag : edit.etag,
    });
    await this.#changed();
    await this.#sync();
  }

  #named(authored) {
    const names = new Set(this.items.map(item => item.name));
    let name = authored.name;
    for (let i = 2; names.has(name); i++) {
      name = `${authored.name} (${i})`;
    }
    return { ...authored, name };
  }

  // One tab sends at a time, so that no edit goes twice.
  async #sync() {
    const send = async () => {
      for (const edit of await kept.all('edits')) {
        if (edit.state === 'waiting' && !await this.#send(edit)) {
          return;
        }
      }
    };
    await (navigator.locks ? navigator.locks.request('rublab-edits', send) : send());
  }

  /** @returns {Promise<boolean>} whether the server answers at all. */
  async #send(edit) {
    try {
      const stored = edit.base === undefined
        ? await kitchen.postFormula(edit.authored, edit.key)
        : await kitchen.putFormula(edit.id, edit.authored, edit.etag ?? await this.#tagOf(edit), edit.key);
      if (stored.id !== edit.id) {
        await kept.put('kept', `became/${edit.id}`, { from: edit.id, to: stored.id });
      }
      this.#enlist(stored);
      await this.#done(edit, stored);
    } catch (fault) {
      if (!(fault instanceof kitchen.Refused) || [401, 403, 429].includes(fault.status) || fault.status >= 500) {
        return false;
      }
      await ([404, 409, 412, 428].includes(fault.status) ? this.#meet(edit) : this.#refuse(edit, fault));
    }
    return true;
  }

  // The list is asked for again later; until then it must not say less than the server just did.
  #enlist({ id, revision, name, kind, updatedAt }) {
    this.list = { ...this.list, items: [...this.list.items.filter(item => item.id !== id), { id, revision, name, kind, updatedAt }] };
  }

  async #tagOf(edit) {
    const held = await kitchen.fetchFormula(edit.id);
    return held.revision === edit.base ? held.etag : '"another"';
  }

  // The server has something else by now: unless it is the same, both stay.
  async #meet(edit) {
    const theirs = await kitchen.fetchFormula(edit.id).catch(fault => fault.status === 404 ? null : undefined);
    if (theirs === undefined) {
      return;
    }
    if (theirs && JSON.stringify(authoredOf(theirs)) === JSON.stringify(authoredOf(edit.authored))) {
      await this.#done(edit, theirs);
      return;
    }
    await this.#replace(edit, {
      ...edit, state: 'conflict', mine: edit.authored, theirs: theirs && authoredOf(theirs), theirsFrom: 'server',
      theirsRevision: theirs?.revision, theirsTag: theirs?.etag, theirsAt: theirs?.updatedAt,
    });
  }

  #refuse(edit, fault) {
    return this.#replace(edit, { ...edit, state: 'refused', status: fault.status, errors: fault.problem?.errors ?? [] });
  }

  async #done(edit, stored) {
    await this.#replace(edit, undefined);
    const later = await kept.get('edits', edit.id);
    if (later) {
      await kept.remove('edits', edit.id);
      await kept.put('edits', stored.id, { ...later, id: stored.id, base: stored.revision, etag: stored.etag });
      await this.#changed();
    }
  }

  // Only the edit that was sent: one made meanwhile stays.
  async #replace(edit, after) {
    await kept.update('edits', edit.id, now => now?.key === edit.key ? after : now);
    await this.#changed();
  }

  async #changed() {
    await this.#read();
    this.#tell();
    this.#channel?.postMessage('changed');
  }

  async #read() {
    this.#edits = new Map((await kept.all('edits')).map(edit => [edit.id, edit]));
    const names = (await kept.all('kept')).filter(value => value?.from && value.to);
    this.#became = new Map(names.map(({ from, to }) => [from, to]));
  }

  #tell() {
    this.#listeners.forEach(listener => listener());
  }
}

/** A key no other edit has; pages without TLS have no randomUUID. */
export function newKey() {
  return [...crypto.getRandomValues(new Uint8Array(16))].map(byte => byte.toString(16).padStart(2, '0')).join('');
}
