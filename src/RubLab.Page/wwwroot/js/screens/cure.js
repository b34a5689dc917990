// A cure: what to weigh of it, and how much of each limited additive it brings against the legal levels.
import { showFaults } from '../bench/faults.js';
import { askFor } from '../cure/answer.js';
import { limitsOf } from '../cure/loads.js';
import { mendingsFor } from '../cure/mend.js';
import { outcomeOf, refusedOf } from '../cure/outcome.js';
import { productOptions } from '../cure/products.js';
import { overGramsOf, refusalsOf } from '../cure/refusal.js';
import { blank, isLiquid, methods } from '../cure/request.js';
import { blankRow, linesOf } from '../cure/rows.js';
import { byId, fillSelect, make } from '../dom.js';
import * as engine from '../engine.js';
import { cutOptions, orNone } from '../forms/choices.js';
import { bareHint, fieldsOf, formOf, keep, showBareUnit, take, workbenchOf } from '../forms/workbench.js';
import { loadWritten } from '../kept/written.js';
import { showNumber } from '../words/numbers.js';
import { say } from '../words/texts.js';

let app;
let section;
let written;
let lines;

export async function open(element, shared) {
  app = shared;
  section = element;
  await app.ready;
  written = loadWritten('cure', blank);
  build();
  app.own.watch(update);
  return { show: update };
}

function build() {
  const { number, select, choice, weights } = fieldsOf('cure', written);
  const hint = key => ({ hint: say(`${key}.hint`) });
  const isSoak = written.method === 'soak';
  lines = linesOf(written.rows, isLiquid(written), changed);
  const form = formOf(say('screen.cure'), takeFrom,
    choice('method', methods),
    select('cut', { label: say('form.cut'), options: offeredCuts() }),
    select('product', { options: productOptions() }),
    number('skin'),
    weights('meat', { label: say('brine.meat'), hint: bareHint(say('brine.meat.hint', { each: showNumber(2.5) })) }),
    !isLiquid(written) ? [] : [
      make('div', { class: 'pair' }, isSoak ? [number('liquid'), number('time', hint('brine.time'))] : [number('pump', hint('brine.pump')), number('retained')]),
      make('div', { class: 'pair' }, number('temperature', hint('brine.temperature')), number('overage')),
    ],
    lines.element,
    number('step'));
  section.replaceChildren(make('h2', null, say('screen.cure')), warning(), workbenchOf('cure', form));
  showSkin();
}

// Before anything is written: a cure is no seasoning.
function warning() {
  return make('section', { id: 'cure-cautions', class: 'cautions flag', 'aria-labelledby': 'cure-cautions-title' },
    make('h3', { id: 'cure-cautions-title' }, say('cure.cautions')),
    make('ul', null, engine.cureCautions().map(caution => make('li', null, caution.text, ' ', make('small', null, say('cautions.defersTo', { who: caution.defersTo }))))));
}

function offeredCuts() {
  const isGround = written.method === 'ground';
  return orNone(cutOptions(engine.cuts().filter(cut => isGround || cut.class !== 'ground' || cut.id === written.cut)), 'form.cut.choose');
}

function takeFrom(control) {
  const { member, i } = take(control, written, 'rows');
  if (member === 'ingredient' || member === 'how') {
    lines.show(member, i);
  } else if (member === 'method') {
    forMethod();
    build();
    byId('cure-method').focus();
  }
  changed();
}

// A pickle is mostly water; what is put on or mixed in as a powder has none that was not asked for.
function forMethod() {
  const isWater = row => row.ingredient === 'water' && row.amount.trim() === '';
  const others = written.rows.filter(row => !isWater(row));
  if (isLiquid(written) && !written.rows.some(row => row.ingredient === 'water')) {
    written.rows.unshift({ ...blankRow, ingredient: 'water' });
  } else if (!isLiquid(written) && others.length > 0) {
    written.rows = others;
  }
}

function changed() {
  keep(app, 'cure', written);
  update();
}

function showSkin() {
  byId('cure-skin').closest('.field').hidden = written.product !== 'bacon';
}

function update() {
  showBareUnit(section, app.settings);
  showSkin();
  fillSelect(byId('cure-cut'), offeredCuts(), written.cut);
  const asked = askFor(written, app.settings);
  const refusals = asked.isRefused ? refusalsOf(asked.errors, 'cure', written.rows, asked.read.rows) : [];
  showFaults(section, asked.faults.concat(refusals), lines.choose);
  byId('cure-outcome').replaceChildren(...shown(asked));
  byId('cure-said').textContent = asked.answer ? inShort(asked.answer) : asked.isRefused ? say('cure.refused') : '';
}

function inShort({ checks }) {
  const open = limitsOf(checks).filter(check => check.measured && check.verdict !== 'within');
  return open.length === 0 ? say('cure.said') : say('cure.said.open', { levels: open.map(check => check.title).join('; ') });
}

function shown(asked) {
  if (asked.answer) {
    return outcomeOf(asked.answer, { written, pieces: asked.read.pieces });
  }
  if (asked.isRefused) {
    const { answer } = askFor(written, app.settings, 'check');
    const overGrams = overGramsOf(asked.errors);
    return refusedOf(answer, { overGrams, mendings: check => overGrams(check) === undefined ? [] : mendings(check, answer.checks, overGrams) });
  }
  return [make('p', null, say(asked.faults.length > 0 ? 'cure.mend-marked' : 'cure.empty'))];
}

// Only at the strictest level of an additive: what meets that meets the others.
function mendings(check, checks, overGrams) {
  const strictest = checks.filter(other => other.additive === check.additive && overGrams(other) !== undefined).toSorted((a, b) => a.highest - b.highest)[0];
  return check !== strictest ? [] : mendingsFor(check, written, app.settings).map(({ text: words, change, row, amount }) => ({
    text: words, change, apply: () => lines.write('amount', row, amount),
  }));
}
