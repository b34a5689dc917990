// What a kitchen sets once on this device: its scales, its bowl, how it measures, what it pays in.

const storageKey = 'rublab.settings';
const usesPounds = ['US', 'LR', 'MM'].includes(new Intl.Locale(navigator.language).maximize().region);

const blank = {
  bareUnit: usesPounds ? 'lb' : 'kg',
  measures: 'us',
  scales: [],
  bowl: '',
  currency: '',
  paper: usesPounds ? 'letter' : 'a4',
  aloud: false,
};

export class Settings {
  constructor() {
    Object.assign(this, blank);
    try {
      const kept = JSON.parse(localStorage.getItem(storageKey) ?? '{}');
      for (const [name, value] of Object.entries(kept ?? {})) {
        if (name in blank && typeof value === typeof blank[name]) {
          this[name] = value;
        }
      }
    } catch {
      // What cannot be read is set again.
    }
  }

  /** @returns {boolean} whether this device keeps it. */
  set(name, value) {
    this[name] = value;
    try {
      localStorage.setItem(storageKey, JSON.stringify(this));
      return true;
    } catch {
      return false;
    }
  }
}

/** The symbol behind a word of measure, as this kitchen's cups and spoons are. */
export function measureSymbol(word, measures) {
  const symbols = {
    us: { tsp: 'tsp', tbsp: 'tbsp', cup: 'cup' },
    metric: { tsp: 'metric-tsp', tbsp: 'metric-tbsp', cup: 'metric-cup' },
    au: { tsp: 'metric-tsp', tbsp: 'au-tbsp', cup: 'metric-cup' },
  };
  return symbols[measures]?.[word] ?? word;
}
