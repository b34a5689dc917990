// The kitchen's stored formulas: asked of the server, kept on this device for when it does not answer.
import * as kept from './kept.js';

const listKey = 'formulas';
const patienceMs = 15000;
const keyOf = id => `formula/${id}`;

/** The server answered, but not with what was asked for. */
class Refused extends Error {
  constructor(status) {
    super(`answer ${status}`);
    this.status = status;
  }
}

/** The list as last kept: `{ items, fetchedAt }`, or undefined. */
export function keptList() {
  return kept.get(listKey);
}

/**
 * Asks for the list and keeps it.
 * @returns {Promise<{items: object[], fetchedAt: string, state: 'fresh' | 'offline' | 'refused', status?: number}>}
 */
export async function refreshList() {
  try {
    const items = [];
    let cursor = '';
    do {
      const page = await ask(`v1/formulas?limit=100${cursor && `&cursor=${encodeURIComponent(cursor)}`}`);
      items.push(...page.items);
      cursor = page.next ?? '';
    } while (cursor);
    const list = { items, fetchedAt: new Date().toISOString() };
    await kept.put(listKey, list);
    await kept.dropExcept('formula/', new Set(items.map(item => keyOf(item.id))));
    return { ...list, state: 'fresh' };
  } catch (fault) {
    const list = await keptList() ?? { items: [], fetchedAt: '' };
    return fault instanceof Refused
      ? { ...list, state: 'refused', status: fault.status }
      : { ...list, state: 'offline' };
  }
}

/** One formula as last kept, as GET /v1/formulas/{id} gave it; undefined where none is. */
export function keptFormula(id) {
  return kept.get(keyOf(id));
}

/**
 * Fetches a formula unless the listed revision is kept already.
 * @returns {Promise<boolean>} whether the listed revision is now kept.
 */
export async function keepFormula({ id, revision }) {
  if ((await keptFormula(id))?.revision === revision) {
    return true;
  }
  try {
    await kept.put(keyOf(id), await ask(`v1/formulas/${encodeURIComponent(id)}`));
    return true;
  } catch {
    return false;
  }
}

async function ask(path) {
  const answer = await fetch(path, { headers: { Accept: 'application/json' }, signal: AbortSignal.timeout(patienceMs) });
  if (!answer.ok) {
    throw new Refused(answer.status);
  }
  return answer.json();
}
