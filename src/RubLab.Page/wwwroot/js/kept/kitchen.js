// The server: the kitchen's formulas, kept on this device for when it does not answer, its own numbers, and its devices.
import { answerFrom } from '../words/said.js';
import * as kept from './kept.js';

const listKey = 'formulas';
const patienceMs = 15000;
const refusalListeners = new Set();
const keyOf = id => `formula/${id}`;

/** The server answered, but not with what was asked for. */
export class Refused extends Error {
  constructor(status, problem, retryAfter) {
    super(`answer ${status}`);
    this.status = status;
    this.problem = problem;
    this.retryAfter = retryAfter;
  }
}

/** The list as last kept: `{ items, fetchedAt }`, or undefined. */
export function keptList() {
  return kept.get('kept', listKey);
}

/**
 * Asks for the list and keeps it.
 * @returns {Promise<{items: object[], fetchedAt: string, state: 'fresh' | 'offline' | 'refused', status?: number}>}
 */
export async function refreshList() {
  try {
    const list = { items: await listOf('v1/formulas'), fetchedAt: new Date().toISOString() };
    await kept.put('kept', listKey, list);
    await kept.dropExcept('kept', 'formula/', new Set(list.items.map(item => keyOf(item.id))));
    return { ...list, state: 'fresh' };
  } catch (fault) {
    const list = await keptList() ?? { items: [], fetchedAt: '' };
    return fault instanceof Refused
      ? { ...list, state: 'refused', status: fault.status }
      : { ...list, state: 'offline' };
  }
}

/** One formula as last kept, as GET /v1/formulas/{id} gave it, with its ETag; undefined where none is. */
export function keptFormula(id) {
  return kept.get('kept', keyOf(id));
}

/**
 * Fetches a formula unless the listed revision is kept already.
 * @returns {Promise<boolean>} whether the listed revision is now kept.
 */
export async function keepFormula({ id, revision }) {
  const held = await keptFormula(id);
  if (held && held.revision === (revision ?? held.revision)) {
    return true;
  }
  try {
    await fetchFormula(id);
    return true;
  } catch {
    return false;
  }
}

/** Fetches a formula and keeps it. */
export async function fetchFormula(id) {
  return keep(await send('GET', `v1/formulas/${encodeURIComponent(id)}`));
}

/** Stores a new formula; the same key twice stores it once. */
export async function postFormula(authored, key) {
  return keep(await send('POST', 'v1/formulas', authored, { 'Idempotency-Key': key }));
}

/** Stores a revision on top of the one with that ETag. */
export async function putFormula(id, authored, etag, key) {
  return keep(await send('PUT', `v1/formulas/${encodeURIComponent(id)}`, authored, { 'If-Match': etag, 'Idempotency-Key': key }));
}

/** Every number of one kind that the kitchen measured itself. */
export function listOwn(path) {
  return listOf(path);
}

/** One of them as the server has it, `{ body, etag }`; null where there is none. */
export async function getOwn(path) {
  try {
    return await send('GET', path);
  } catch (fault) {
    if (fault.status === 404) {
      return null;
    }
    throw fault;
  }
}

/** Stores one; `etag` of the one it replaces, if there is one. */
export async function putOwn(path, measured, etag) {
  return (await send('PUT', path, measured, etag ? { 'If-Match': etag } : {})).body;
}

/** Takes one out. */
export async function deleteOwn(path, etag) {
  return (await send('DELETE', path, undefined, { 'If-Match': etag })).body;
}

/** Who this device is to the server. */
export async function currentSession() {
  return (await send('GET', 'v1/sessions/current')).body;
}

/** Pairs this device by a code. */
export async function pair(code, name) {
  return (await send('POST', 'v1/sessions', { code, ...(name && { name }) })).body;
}

/** Signs this device out. */
export function unpairCurrent() {
  return send('DELETE', 'v1/sessions/current');
}

/** Every paired device, oldest first. */
export function listDevices() {
  return listOf('v1/sessions');
}

/** Unpairs another device. */
export function unpair(id) {
  return send('DELETE', `v1/sessions/${encodeURIComponent(id)}`);
}

/** A code for one more device. */
export async function newCode(request) {
  return (await send('POST', 'v1/pairing-codes', request)).body;
}

/** @param {() => void} listener called whenever the server answers that it does not know this device. */
export function watchRefusals(listener) {
  refusalListeners.add(listener);
}

/** Drops the copies of the server's formulas; what was written here stays. */
export async function dropCopies() {
  await kept.remove('kept', listKey);
  await kept.dropExcept('kept', 'formula/', new Set());
}

async function keep({ body, etag }) {
  const formula = { ...body, etag };
  await kept.put('kept', keyOf(formula.id), formula);
  return formula;
}

async function listOf(path) {
  const items = [];
  let cursor = '';
  do {
    const { body } = await send('GET', `${path}?limit=100${cursor && `&cursor=${encodeURIComponent(cursor)}`}`);
    items.push(...body.items);
    cursor = body.next ?? '';
  } while (cursor);
  return items;
}

async function send(method, path, body, headers = {}) {
  const answer = await fetch(path, {
    method,
    headers: { Accept: 'application/json', ...(body && { 'Content-Type': 'application/json' }), ...headers },
    body: body && JSON.stringify(body),
    signal: AbortSignal.timeout(patienceMs),
  });
  const text = await answer.text();
  if (!answer.ok) {
    let problem;
    try {
      problem = answerFrom(text);
    } catch {
      problem = undefined;
    }
    const refused = new Refused(answer.status, problem, answer.headers.get('Retry-After') ?? '');
    if (answer.status === 401) {
      refusalListeners.forEach(listener => listener());
    }
    throw refused;
  }
  return { body: text ? JSON.parse(text) : null, etag: answer.headers.get('ETag') ?? '' };
}
