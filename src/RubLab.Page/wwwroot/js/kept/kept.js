// What this device keeps between visits, in IndexedDB; in memory where the browser refuses it.

const database = 'rublab';
const version = 3;

// What each version of the database added. Nothing a kitchen has is ever taken out.
const migrations = [
  db => db.createObjectStore('kept'),
  db => ['edits', 'weighouts', 'own'].forEach(name => db.createObjectStore(name)),
  db => db.createObjectStore('yields'),
];

const memory = new Map();
const listeners = new Set();
let opening;
let trouble = '';

/** Calls back with 'denied', 'full', 'newer' or '' whenever the answer changes, and at once if there is trouble already. */
export function watchTrouble(listener) {
  listeners.add(listener);
  if (trouble) {
    listener(trouble);
  }
}

/** The value under a key, or undefined. */
export async function get(store, key) {
  const held = memory.get(`${store}/${key}`);
  return held !== undefined ? held.value : ask(store, objects => objects.get(key));
}

/** Every value of a store. */
export async function all(store) {
  const keys = await ask(store, objects => objects.getAllKeys()) ?? [];
  const values = await ask(store, objects => objects.getAll()) ?? [];
  const found = new Map(keys.map((key, i) => [key, values[i]]));
  for (const [address, { value }] of memory) {
    if (address.startsWith(`${store}/`)) {
      found.set(address.slice(store.length + 1), value);
    }
  }
  return [...found.values()].filter(value => value !== undefined);
}

/**
 * Keeps a value.
 * @returns {Promise<boolean>} whether it is on the device; if not, it is held until the page closes.
 */
export function put(store, key, value) {
  return update(store, key, () => value);
}

/** Drops a value. */
export function remove(store, key) {
  return update(store, key, () => undefined);
}

/**
 * Reads and writes a value in one go, so that no other tab comes between.
 * @param {(before: any) => any} change gives what to keep; undefined drops it.
 * @returns {Promise<boolean>} whether it is on the device.
 */
export async function update(store, key, change) {
  const address = `${store}/${key}`;
  const db = await open();
  if (!db) {
    memory.set(address, { value: change(memory.get(address)?.value) });
    return false;
  }
  let after;
  const fault = await new Promise(resolve => {
    try {
      const transaction = db.transaction(store, 'readwrite', { durability: 'strict' });
      const objects = transaction.objectStore(store);
      transaction.oncomplete = () => resolve(null);
      transaction.onabort = () => resolve(transaction.error ?? new Error('aborted'));
      const reading = objects.get(key);
      reading.onsuccess = () => {
        after = change(memory.has(address) ? memory.get(address).value : reading.result);
        after === undefined ? objects.delete(key) : objects.put(after, key);
      };
    } catch (failure) {
      after ??= change(memory.get(address)?.value);
      resolve(failure);
    }
  });
  if (fault) {
    memory.set(address, { value: after });
    tell(opening ? 'full' : 'newer');
    return false;
  }
  memory.delete(address);
  tell('');
  return true;
}

/** Drops every key of the store that starts so and is not wanted any more. */
export async function dropExcept(store, prefix, wanted) {
  const isDropped = key => key.startsWith(prefix) && !wanted.has(key);
  for (const key of (await ask(store, objects => objects.getAllKeys()) ?? []).filter(isDropped)) {
    await remove(store, key);
  }
}

function open() {
  opening ??= new Promise(resolve => {
    try {
      const request = indexedDB.open(database, version);
      request.onupgradeneeded = event => migrations.slice(event.oldVersion).forEach(migrate => migrate(request.result));
      request.onsuccess = () => {
        // Another tab brings a newer version, or the visitor clears the data: make way, and open again when asked.
        request.result.onversionchange = () => {
          request.result.close();
          opening = undefined;
        };
        request.result.onclose = () => {
          opening = undefined;
        };
        resolve(request.result);
      };
      request.onerror = () => {
        tell(request.error?.name === 'VersionError' ? 'newer' : 'denied');
        resolve(null);
      };
    } catch {
      tell('denied');
      resolve(null);
    }
  });
  return opening;
}

async function ask(store, question) {
  const db = await open();
  return db ? new Promise(resolve => {
    try {
      const request = question(db.transaction(store).objectStore(store));
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => resolve(undefined);
    } catch {
      resolve(undefined);
    }
  }) : undefined;
}

function tell(now) {
  if (now !== trouble) {
    trouble = now;
    listeners.forEach(listener => listener(now));
  }
}
