// A weigh-out as it stands, on this device after every step.
import * as kept from '../kept/kept.js';
import { newKey } from '../kept/library.js';

const mostKept = 20;

/** What a sheet is known by: everything that decides what is weighed. */
export function markOf({ answer, read }) {
  const amounts = answer.treatments.map(({ name, lines, pieces, bowls }) => [name, lines.map(line => [line.ingredient, line.form, line.toMix]), pieces.map(piece => [piece.number, piece.amount]), bowls ?? null]);
  return JSON.stringify([amounts, read.pieces.map(piece => piece.written)]);
}

/** Begins one. */
export async function begin(sheet, steps) {
  const weighout = {
    id: newKey(), begunAt: new Date().toISOString(), changedAt: new Date().toISOString(), mark: markOf(sheet),
    title: sheet.answer.treatments.map(treatment => treatment.name).join(', '), pieces: sheet.read.pieces.length,
    steps, done: [], at: 0, isEnded: false,
  };
  const isKept = await keep(weighout);
  await dropOldest();
  return { weighout, isKept };
}

/** @returns {Promise<boolean>} whether it is on the device and would outlast a flat battery. */
export function keep(weighout) {
  return kept.put('weighouts', weighout.id, { ...weighout, changedAt: new Date().toISOString() });
}

export function find(id) {
  return kept.get('weighouts', id);
}

/** All, the last touched first. */
export async function all() {
  return (await kept.all('weighouts')).sort((a, b) => b.changedAt.localeCompare(a.changedAt));
}

/** Puts one away for good. */
export function forget(id) {
  return kept.remove('weighouts', id);
}

async function dropOldest() {
  const ended = (await all()).filter(weighout => weighout.isEnded);
  for (const weighout of ended.slice(mostKept)) {
    await forget(weighout.id);
  }
}
