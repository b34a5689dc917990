// Numbers a kitchen measured itself, of one kind: kept on this device, computed with from then on, sent when the server
// answers. What was changed here waits with its key and what it was changed from; where the server has something else
// by then, both are kept until the cook says.
import * as kept from './kept.js';
import * as kitchen from './kitchen.js';
import { newKey } from './library.js';

const passing = [401, 403, 429];
const met = [409, 412, 428];

// Two lists of measurements as one: what stands in both is one measurement, not two.
function together(mine, theirs) {
  const left = theirs.map(item => JSON.stringify(item));
  for (const item of mine) {
    const at = left.indexOf(JSON.stringify(item));
    if (at >= 0) {
      left.splice(at, 1);
    }
  }
  return [...mine, ...left.map(text => JSON.parse(text))];
}

export class OwnNumbers {
  #kind;
  #all = new Map();
  #listeners = new Set();
  #channel;
  #turn = Promise.resolve();
  #isStarted = false;

  /**
   * @param {object} kind of number.
   * @param {string} kind.store where this device keeps them.
   * @param {string} kind.path where the server does.
   * @param {string[]} kind.names the members that say what a number is of.
   * @param {string} kind.list the member that holds what was measured.
   * @param {(measured: object) => object} kind.authored one measurement as a cook wrote it.
   * @param {(items: object[]) => void} kind.use computes with them from then on.
   */
  constructor(kind) {
    this.#kind = kind;
    this.#channel = 'BroadcastChannel' in globalThis ? new BroadcastChannel(`rublab-${kind.store}`) : null;
  }

  watch(listener) {
    this.#listeners.add(listener);
  }

  /** Computes with what this device has, then with what the server has too; not before the engine is ready. */
  async start() {
    this.#isStarted = true;
    await this.#read();
    this.#channel?.addEventListener('message', async () => {
      await this.#read();
      this.#tell();
    });
    window.addEventListener('online', () => this.refresh());
    this.refresh();
  }

  /** What is computed with: the members that name it, what was measured, and `state`: 'kept', 'waiting', 'conflict' or 'refused'. */
  get items() {
    return this.everything.filter(item => item[this.#kind.list]);
  }

  /** The same with what was taken out here and is not sent yet. */
  get everything() {
    return [...this.#all.values()];
  }

  /** One of them, or undefined. */
  of(names) {
    return this.#all.get(this.#keyOf(names));
  }

  /**
   * Changes what was measured of one thing, keeps it on this device and sends it as soon as the server answers.
   * @param {object} names what it is of.
   * @param {(measured: object[]) => object[] | null} change gives the list from the one before; null takes it all out.
   * @returns {Promise<boolean>} whether this device keeps it.
   */
  async change(names, change) {
    const { store, list } = this.#kind;
    const isKept = await kept.update(store, this.#keyOf(names), before => {
      const measured = change(before?.[list] ?? []);
      return stateOf(before) === 'conflict'
        ? { ...before, [list]: measured, key: newKey() }
        : { ...this.#namesOf(names), [list]: measured, state: 'waiting', key: newKey(), at: new Date().toISOString(), base: before?.base };
    });
    await this.#changed();
    this.refresh();
    return isKept;
  }

  /**
   * Ends a conflict.
   * @param {object} conflict as shown to the cook.
   * @param {'mine' | 'theirs' | 'both'} choice
   */
  async settle(conflict, choice) {
    const { store, list } = this.#kind;
    const { theirs } = conflict;
    await kept.update(store, this.#keyOf(conflict), now => {
      if (now?.key !== conflict.key) {
        return now;
      }
      const settled = { ...this.#namesOf(now), base: now.theirsBase };
      if (choice === 'theirs') {
        return theirs ? { ...settled, [list]: theirs, state: 'kept' } : undefined;
      }
      const measured = choice === 'both' ? together((now[list] ?? []).map(this.#kind.authored), theirs ?? []) : now[list];
      return { ...settled, [list]: measured, state: 'waiting', key: newKey(), at: now.at };
    });
    await this.#changed();
    await this.refresh();
  }

  /** Sends what waits and takes what the server has; one exchange at a time, whichever tab asks. */
  refresh() {
    const exchange = () => this.#exchange();
    const turn = () => navigator.locks ? navigator.locks.request(`rublab-${this.#kind.store}`, exchange) : exchange();
    // The server does not answer: what is on this device stands until it does.
    this.#turn = this.#turn.then(turn).catch(() => {});
    return this.#turn;
  }

  /** Takes what this device keeps by now. */
  async reread() {
    await this.#read();
    this.#tell();
    this.#channel?.postMessage('changed');
  }

  /** Drops the copies of what the server has; what was written here stays. */
  async dropCopies() {
    const { store } = this.#kind;
    for (const item of (await kept.all(store)).filter(held => stateOf(held) === 'kept')) {
      await kept.remove(store, this.#keyOf(item));
    }
    await this.reread();
  }

  async #exchange() {
    const { store, path } = this.#kind;
    for (const item of (await kept.all(store)).filter(held => stateOf(held) === 'waiting')) {
      await this.#send(item);
    }
    const stored = await kitchen.listOwn(path);
    for (const answer of stored) {
      await kept.update(store, this.#keyOf(answer), now => stateOf(now) === 'kept' ? this.#copyOf(answer) : now);
    }
    const known = new Set(stored.map(answer => this.#keyOf(answer)));
    for (const item of (await kept.all(store)).filter(held => stateOf(held) === 'kept' && !known.has(this.#keyOf(held)))) {
      await kept.remove(store, this.#keyOf(item));
    }
    await this.#changed();
  }

  async #send(item) {
    const { list } = this.#kind;
    try {
      const held = await kitchen.getOwn(this.#pathOf(item));
      if (this.#isSame(held?.body[list] ?? null, item[list])) {
        await this.#done(item, held?.body);
      } else if ((held && baseOf(held.body)) !== (item.base ?? null)) {
        await this.#meet(item, held?.body);
      } else {
        await this.#done(item, item[list]
          ? await kitchen.putOwn(this.#pathOf(item), { [list]: item[list] }, held?.etag)
          : await kitchen.deleteOwn(this.#pathOf(item), held.etag));
      }
    } catch (fault) {
      if (!(fault instanceof kitchen.Refused) || passing.includes(fault.status) || fault.status >= 500) {
        throw fault;
      }
      if (met.includes(fault.status)) {
        await this.#meet(item, (await kitchen.getOwn(this.#pathOf(item)))?.body);
      } else if (fault.status === 404 && !item[list]) {
        await this.#done(item);
      } else {
        await this.#replace(item, { ...item, state: 'refused', status: fault.status, errors: fault.problem?.errors ?? [] });
      }
    }
  }

  // Taken up by the server. What was changed meanwhile was changed from that.
  #done(item, stored) {
    return this.#replace(item, stored ? this.#copyOf(stored) : undefined, now => now && { ...now, base: stored ? baseOf(stored) : undefined });
  }

  #meet(item, stored) {
    return this.#replace(item, {
      ...item, state: 'conflict', theirs: stored ? this.#measuredOf(stored) : null, theirsBase: stored ? baseOf(stored) : undefined, theirsAt: stored?.updatedAt,
    });
  }

  async #replace(item, after, otherwise = now => now) {
    await kept.update(this.#kind.store, this.#keyOf(item), now => now?.key === item.key ? after : otherwise(now));
    await this.#changed();
  }

  #copyOf(stored) {
    return { ...this.#namesOf(stored), [this.#kind.list]: this.#measuredOf(stored), state: 'kept', base: baseOf(stored) };
  }

  #measuredOf(stored) {
    return stored[this.#kind.list].map(this.#kind.authored);
  }

  #isSame(theirs, mine) {
    const asText = list => JSON.stringify(list && list.map(this.#kind.authored));
    return asText(theirs) === asText(mine);
  }

  #namesOf(item) {
    return Object.fromEntries(this.#kind.names.map(name => [name, item[name]]));
  }

  #keyOf(item) {
    return this.#kind.names.map(name => item[name]).join('/');
  }

  #pathOf(item) {
    return [this.#kind.path, ...this.#kind.names.map(name => encodeURIComponent(item[name]))].join('/');
  }

  async #changed() {
    const before = JSON.stringify(this.everything);
    await this.#read();
    if (JSON.stringify(this.everything) !== before) {
      this.#tell();
      this.#channel?.postMessage('changed');
    }
  }

  async #read() {
    this.#all = new Map((await kept.all(this.#kind.store)).map(item => [this.#keyOf(item), { ...item, state: stateOf(item) }]));
    if (this.#isStarted) {
      this.#kind.use(this.items);
    }
  }

  #tell() {
    this.#listeners.forEach(listener => listener());
  }
}

// What the server had when it was read. The time stands beside the revision for a store that was begun anew.
function baseOf({ revision, updatedAt }) {
  return `${revision} ${updatedAt}`;
}

// The first ones kept had no state and only said whether they were sent.
function stateOf(item) {
  return item?.state ?? (item?.isWaiting ? 'waiting' : 'kept');
}
