// Whether the server lets this device in. A device that was paired and is so no longer gives up the copies of what
// the kitchen has; what was written here and not sent yet stays.
import { say } from '../words/texts.js';
import * as kitchen from './kitchen.js';

const pairedKey = 'rublab.paired';

export class Access {
  #app;
  #listeners = new Set();

  constructor(app) {
    this.#app = app;
    /** 'asking', 'in' (paired), 'open' (nothing to pair here), 'out' or 'offline'. */
    this.state = 'asking';
    this.session = null;
  }

  /** @param {() => void} listener called whenever the state has changed. */
  watch(listener) {
    this.#listeners.add(listener);
  }

  /** From then on any answer of 401 is one that concerns the whole page. */
  start() {
    kitchen.watchRefusals(() => this.state !== 'out' && this.#shutOut());
  }

  /** Asks the server who this device is. */
  async ask() {
    try {
      this.session = await kitchen.currentSession();
      this.#mark(true);
      this.#become('in');
    } catch (fault) {
      if (fault.status === 401) {
        await this.#shutOut();
      } else {
        this.#become(fault.status === 404 ? 'open' : 'offline');
      }
    }
  }

  /**
   * Enters a code.
   * @throws {kitchen.Refused} as the server refused it.
   */
  async pair(code, name) {
    this.session = await kitchen.pair(code, name);
    this.#mark(true);
    this.#become('in');
    await Promise.all([this.#app.library, this.#app.own, this.#app.yields].map(part => part.refresh()));
  }

  /** Signs this device out. */
  async leave() {
    await kitchen.unpairCurrent();
    await this.#shutOut();
  }

  // What is said to be gone is gone by then.
  async #shutOut() {
    const wasPaired = this.#wasPaired();
    this.state = 'out';
    this.session = null;
    if (wasPaired) {
      await kitchen.dropCopies();
      this.#mark(false);
      await this.#app.library.reread();
      await this.#app.own.dropCopies();
      await this.#app.yields.dropCopies();
    }
    // A code may have been entered meanwhile.
    if (this.state === 'out') {
      this.#become('out', wasPaired);
    }
  }

  #become(state, wasPaired = false) {
    this.state = state;
    const waiting = [this.#app.library.items, this.#app.own.everything, this.#app.yields.everything].flat().filter(item => item.state !== 'kept').length;
    const text = state !== 'out' ? '' : [say(wasPaired ? 'pairing.unpaired' : 'pairing.needed'), waiting > 0 ? say('pairing.safe') : ''].filter(Boolean).join(' ');
    this.#app.notices.show('pairing', text, [{ text: say('pairing.enter'), act: () => this.#app.go('pairing') }]);
    this.#listeners.forEach(listener => listener());
  }

  #wasPaired() {
    try {
      return localStorage.getItem(pairedKey) === 'yes';
    } catch {
      return false;
    }
  }

  #mark(isPaired) {
    try {
      isPaired ? localStorage.setItem(pairedKey, 'yes') : localStorage.removeItem(pairedKey);
    } catch {
      // Where nothing is kept there are no copies to give up either.
    }
  }
}
