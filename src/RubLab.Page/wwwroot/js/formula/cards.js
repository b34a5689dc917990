// Cards that are written and not saved yet, each under its formula, so that they survive a reload and a look at another.

const storageKey = 'rublab.cards';
let memory;
const keyOf = id => id ?? 'new';

/** The unsaved card of a formula, `{ card, based }`, or undefined; of a new one where the id is null. */
export function of(id) {
  return all()[keyOf(id)];
}

/** @returns {boolean} whether this device keeps it. */
export function keep(id, written) {
  return write({ ...all(), [keyOf(id)]: written });
}

export function forget(id) {
  const rest = all();
  delete rest[keyOf(id)];
  write(rest);
}

// This tab's own first: two tabs may write on one formula.
function all() {
  if (memory) {
    return { ...memory };
  }
  for (const storage of ['sessionStorage', 'localStorage']) {
    try {
      const kept = JSON.parse(globalThis[storage].getItem(storageKey));
      if (kept && typeof kept === 'object') {
        return kept;
      }
    } catch {
      // Storage denied or text of no use.
    }
  }
  return {};
}

function write(cards) {
  memory = cards;
  try {
    sessionStorage.setItem(storageKey, JSON.stringify(cards));
    localStorage.setItem(storageKey, JSON.stringify(cards));
    return true;
  } catch {
    return false;
  }
}
