// The weigh-outs that were begun and not ended, offered on the bench with what was done.
import { button, make } from '../dom.js';
import { moment } from '../words/numbers.js';
import { say } from '../words/texts.js';
import { all, forget } from './state.js';

/** One offer for each. */
export async function offersOf(app) {
  return (await all()).filter(weighout => !weighout.isEnded).map(weighout => {
    const offer = make('div', { class: 'notice offer' },
      make('p', null, say('weighout.unfinished', { title: weighout.title, ...progressOf(weighout), when: moment(weighout.changedAt) })),
      button(say('weighout.goOn'), () => app.go('weigh-out', weighout.id), { class: 'main' }),
      button(say('weighout.putAway'), async () => {
        await forget(weighout.id);
        offer.remove();
      }, { class: 'plain' }));
    return offer;
  });
}

/** How far it has come. */
export function progressOf({ steps, done }) {
  const count = done.filter(Boolean).length;
  const last = steps[done.findLastIndex(Boolean)];
  return { count, of: steps.length, last: last ? `${last.what} ${last.amount}`.trim() : say('weighout.nothing') };
}
