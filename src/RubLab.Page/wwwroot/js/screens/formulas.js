// The library on this device: every formula, what waits to be sent, and two versions of one side by side.
import { button, make } from '../dom.js';
import * as engine from '../engine.js';
import { beside } from '../formula/figures.js';
import { locale } from '../words/numbers.js';
import { say, sayCount } from '../words/texts.js';

let app;
let section;

export async function open(element, shared) {
  app = shared;
  section = element;
  app.library.watch(() => !section.hidden && show());
  return { show };
}

async function show() {
  await app.ready;
  const { list, items } = app.library;
  const collator = new Intl.Collator(locale, { numeric: true });
  const conflicts = items.filter(item => item.state === 'conflict');
  const waiting = items.filter(item => item.state === 'waiting');
  section.replaceChildren(
    make('h2', null, say('formulas.title')),
    make('p', { class: 'hint', role: 'status' }, list.state === 'fresh' ? say('formulas.fresh') : say(`formulas.here.${list.state}`, { status: list.status })),
    waiting.length > 0 ? make('p', { class: 'flag' }, sayCount('formulas.waitingCount', waiting.length), ' ', button(say('formulas.sendNow'), () => app.library.refresh(), { class: 'plain' })) : '',
    ...conflicts.map(item => conflictOf(app.library.editOf(item.id))),
    make('ul', { class: 'library' }, items.toSorted((a, b) => collator.compare(a.name, b.name)).map(item => make('li', null,
      make('a', { href: `#/formula/${encodeURIComponent(item.id)}` }, item.name),
      make('small', null, [say(`kind.${item.kind}`), item.revision > 0 && say('formulas.revision', { revision: item.revision }), item.state !== 'kept' && say(`formulas.is.${item.state}`)].filter(Boolean).join(', ')),
      button(say('formulas.putOn'), () => {
        app.putOn(item.id);
        app.go('bench');
      }, { class: 'plain', 'aria-label': say('formulas.putOn.of', { name: item.name }) })))),
    make('a', { class: 'plain', href: '#/formula/new' }, say('form.write')));
}

function conflictOf(edit) {
  const mine = engine.readFormula(edit.mine).ok;
  const theirs = edit.theirs && engine.readFormula(edit.theirs).ok;
  const choose = choice => button(say(`conflict.${choice}`), () => app.library.settle(edit.id, choice), { class: choice === 'both' ? 'main' : 'plain' });
  const titles = [say('conflict.title.mine'), edit.theirsFrom === 'server' ? say('conflict.title.server', { revision: edit.theirsRevision ?? '' }) : say('conflict.title.tab')];
  return make('section', { class: 'conflict', 'aria-label': say('conflict.of', { name: edit.mine.name }) },
    make('h3', null, say('conflict.of', { name: edit.mine.name })),
    make('p', null, say(edit.theirs ? `conflict.how.${edit.theirsFrom}` : 'conflict.gone')),
    mine && theirs ? beside([{ title: titles[0], answer: mine }, { title: titles[1], answer: theirs }]) : null,
    make('div', { class: 'doings' }, edit.theirs ? [choose('both'), choose('mine'), choose('theirs')] : [choose('mine'), choose('theirs')]));
}
