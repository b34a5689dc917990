// What the cook has entered on the bench, kept on this device as written: readable or not.

const storageKey = 'rublab.draft';

const blank = { weighingStep: '1 g', overage: '5', portion: '170' };
const blankTreatment = { formula: '', adjusted: null, dose: '', liquid: '', retained: '', applications: '', stage: '', time: '', temperature: '', on: [] };
const blankLine = { cut: '', pile: '', weightIs: 'green', trimLoss: '', addedSolution: '', planned: '', product: '' };

export const newTreatment = () => ({ ...blankTreatment, on: [] });

/** A line of the pile under a key no other line has. */
export function newLine(lines) {
  const highest = Math.max(0, ...lines.map(line => Number(line.key.slice(1)) || 0));
  return { key: `l${highest + 1}`, ...blankLine };
}

/** This tab's own if it has one, else the last one written on this device. */
export function loadDraft() {
  for (const storage of ['sessionStorage', 'localStorage']) {
    try {
      const kept = JSON.parse(globalThis[storage].getItem(storageKey));
      if (kept && typeof kept === 'object') {
        return sound(kept);
      }
    } catch {
      // Storage denied or text of no use: the next one, or a blank bench.
    }
  }
  return sound({});
}

/** @returns {boolean} whether this device keeps it; a browser may refuse. */
export function saveDraft(draft) {
  try {
    const text = JSON.stringify(draft);
    sessionStorage.setItem(storageKey, text);
    localStorage.setItem(storageKey, text);
    return true;
  } catch {
    return false;
  }
}

/** Calls back when another tab writes on its own bench. */
export function watchOtherTabs(listener) {
  window.addEventListener('storage', event => event.key === storageKey && event.newValue && listener());
}

// The first drafts had one formula and one line.
function sound(kept) {
  const { formula, cut, pile, weightIs, trimLoss } = kept;
  const treatments = kept.treatments ?? [{ formula }];
  const lines = kept.lines ?? [{ key: 'l1', cut, pile, weightIs, trimLoss }];
  return {
    ...fill(blank, kept),
    treatments: treatments.map(treatment => ({ ...fill(blankTreatment, treatment), on: treatment.on ?? [], adjusted: treatment.adjusted ?? null })),
    lines: lines.map((line, i) => ({ key: line.key ?? `l${i + 1}`, ...fill(blankLine, line) })),
  };
}

function fill(pattern, kept) {
  return Object.fromEntries(Object.entries(pattern).map(([name, value]) => [name, typeof kept?.[name] === typeof value && name in (kept ?? {}) ? kept[name] : value]));
}
