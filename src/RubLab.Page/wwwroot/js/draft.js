// What the cook has entered, kept on this device as written: readable or not.

const storageKey = 'rublab.draft';

const usesPounds = ['US', 'LR', 'MM'].includes(new Intl.Locale(navigator.language).maximize().region);

const blank = {
  formula: '',
  cut: '',
  pile: '',
  bareUnit: usesPounds ? 'lb' : 'kg',
  weightIs: 'green',
  trimLoss: '',
  weighingStep: '1 g',
  overage: '5',
  portion: '170',
};

export function loadDraft() {
  try {
    const kept = JSON.parse(localStorage.getItem(storageKey) ?? '{}');
    const known = Object.entries(kept ?? {}).filter(([name, value]) => name in blank && typeof value === 'string');
    return { ...blank, ...Object.fromEntries(known) };
  } catch {
    return { ...blank };
  }
}

/** @returns {boolean} whether this device keeps it; a browser may refuse. */
export function saveDraft(draft) {
  try {
    localStorage.setItem(storageKey, JSON.stringify(draft));
    return true;
  } catch {
    return false;
  }
}
