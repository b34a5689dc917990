// What could be written instead where a load is above a legal level: less of what brings it.
import { ingredient } from '../engine.js';
import { writeNumber } from '../words/numbers.js';
import { amount } from '../words/show.js';
import { say } from '../words/texts.js';
import { additivesOf } from './additives.js';
import { askFor } from './answer.js';
import { isRefusal } from './refusal.js';
import { isLiquid, readCure } from './request.js';
import { canBeTarget } from './rows.js';
import { seek } from './seek.js';

/**
 * @param {object} check of the additive's strictest exceeded level.
 * @param {object} written the form.
 * @returns {{text: string, change: string, row: number, amount: string}[]}
 */
export function mendingsFor(check, written, settings) {
  const rows = written.rows.map((row, i) => additivesOf(row.ingredient).includes(check.additive) ? i : -1).filter(i => i >= 0);
  return check.highest > 0 ? rows.map(row => mendingOf(row, check, written, settings)).filter(Boolean) : [];
}

function mendingOf(row, check, written, settings) {
  const { read } = askFor(written, settings, 'check');
  const line = read.rows.indexOf(row);
  const isTarget = written.rows[row].how === 'target' && canBeTarget(written.rows[row], isLiquid(written));
  const found = isTarget ? `${writeNumber(check.highest)} ppm` : byAmount(row, line, check, written, settings);
  const after = found && askFor(changed(written, row, found), settings);
  if (!after || after.errors?.some(error => isRefusal(error) && error.parameters.limit === check.id)) {
    return null;
  }
  const weighed = after.answer?.lines[line].weighed;
  const { name } = ingredient(written.rows[row].ingredient);
  return {
    row, amount: found,
    text: say('cure.mend', { name, amount: found, before: written.rows[row].amount.trim() }),
    change: weighed ? say('cure.mend.weigh', { weight: amount(weighed) }) : '',
  };
}

function byAmount(row, line, check, written, settings) {
  const { request } = readCure(written, settings);
  const lines = request?.lines ?? request?.treatments[0].formula.lines;
  const now = lines?.[line].amount;
  if (!(now?.value > 0)) {
    return null;
  }
  const unit = { '%-of-liquid': '%', '%-of-water': '% of water' }[now.unit] ?? now.unit;
  const text = value => `${writeNumber(value)} ${unit}`;
  const found = seek(now.value, check.highest, value => measured(askFor(changed(written, row, text(value)), settings, 'check'), check));
  return found && text(found);
}

function measured({ answer }, { id }) {
  return answer?.checks.find(check => check.id === id)?.measured?.high;
}

function changed(written, row, text) {
  return { ...written, rows: written.rows.map((own, i) => i === row ? { ...own, amount: text } : own) };
}
