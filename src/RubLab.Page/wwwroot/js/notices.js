// What the page has to say about itself, above everything else, one line each.
import { button, byId, make } from './dom.js';
import { say } from './words/texts.js';

export class Notices {
  #shown = new Map();

  /**
   * Shows a notice; the same id again replaces it, an empty text takes it away.
   * @param {string} id
   * @param {string} text
   * @param {{text: string, act: () => void}[]} [actions]
   */
  show(id, text, actions) {
    if (text) {
      this.#shown.set(id, { text, actions: actions ?? [{ text: say('app.dismiss'), act: () => {} }] });
    } else {
      this.#shown.delete(id);
    }
    byId('notices').replaceChildren(...[...this.#shown].map(([key, notice]) => make('div', { class: 'notice' },
      make('p', null, notice.text),
      notice.actions.map(action => button(action.text, () => {
        this.show(key, '');
        action.act();
      })))));
  }

  /** Says what was done at a tap, so that it can be taken back at a tap. */
  offerBack(id, text, undo) {
    this.show(id, text, [{ text: say('mend.undo'), act: undo }, { text: say('mend.keep'), act: () => {} }]);
  }
}
