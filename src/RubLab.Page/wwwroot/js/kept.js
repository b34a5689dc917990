// What this device keeps between visits, in IndexedDB; in memory where the browser refuses it.

const database = 'rublab';
const store = 'kept';
const memory = new Map();
let opening;

function open() {
  opening ??= new Promise(resolve => {
    try {
      const request = indexedDB.open(database, 1);
      request.onupgradeneeded = () => request.result.createObjectStore(store);
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => resolve(null);
    } catch {
      resolve(null);
    }
  });
  return opening;
}

/** The value under a key, or undefined. */
export async function get(key) {
  const db = await open();
  if (!db) {
    return memory.get(key);
  }
  return new Promise(resolve => {
    const request = db.transaction(store).objectStore(store).get(key);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => resolve(memory.get(key));
  });
}

/** Keeps a value; a device that is full keeps it until the page closes. */
export async function put(key, value) {
  memory.set(key, value);
  await write(objects => objects.put(value, key));
}

/** Drops every key that starts so and is not wanted any more. */
export async function dropExcept(prefix, wanted) {
  const isDropped = key => key.startsWith(prefix) && !wanted.has(key);
  [...memory.keys()].filter(isDropped).forEach(key => memory.delete(key));
  await write(objects => {
    objects.getAllKeys().onsuccess = event => event.target.result.filter(isDropped).forEach(key => objects.delete(key));
  });
}

async function write(change) {
  const db = await open();
  if (!db) {
    return;
  }
  await new Promise(resolve => {
    const transaction = db.transaction(store, 'readwrite');
    transaction.oncomplete = resolve;
    transaction.onerror = resolve;
    transaction.onabort = resolve;
    change(transaction.objectStore(store));
  });
}
