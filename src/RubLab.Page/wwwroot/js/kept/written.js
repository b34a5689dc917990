// What is written in the form of one screen, kept on this device as it stands: readable or not.

/**
 * @param {string} name the screen it belongs to.
 * @param {object} blank what an untouched form holds; a list's first row is what a new row holds.
 * @returns {object} what was written, this tab's own first, every member as in `blank`.
 */
export function loadWritten(name, blank) {
  for (const storage of ['sessionStorage', 'localStorage']) {
    try {
      const kept = JSON.parse(globalThis[storage].getItem(keyOf(name)));
      if (kept && typeof kept === 'object') {
        return like(blank, kept);
      }
    } catch {
      // Storage denied or text of no use: the next one, or a blank form.
    }
  }
  return structuredClone(blank);
}

/** @returns {boolean} whether this device keeps it; a browser may refuse. */
export function saveWritten(name, written) {
  try {
    const text = JSON.stringify(written);
    sessionStorage.setItem(keyOf(name), text);
    localStorage.setItem(keyOf(name), text);
    return true;
  } catch {
    return false;
  }
}

function keyOf(name) {
  return `rublab.${name}`;
}

function like(pattern, kept) {
  return Object.fromEntries(Object.entries(pattern).map(([name, value]) => {
    const own = kept?.[name];
    if (Array.isArray(value)) {
      return [name, Array.isArray(own) && own.length > 0 ? own.map(row => like(value[0], row)) : structuredClone(value)];
    }
    return [name, typeof own === typeof value ? own : value];
  }));
}
