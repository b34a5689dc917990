// Messages beside the fields they are about.
import { byId, make } from './dom.js';
import { showNumber } from './numbers.js';
import { say, sayCount } from './texts.js';

const fields = ['formula', 'cut', 'pile', 'trimLoss', 'weighingStep', 'overage', 'portion'];
const mostShown = 8;

/**
 * Shows every fault beside its field and clears the rest.
 * @param {{field: string, line?: number, code?: string, values?: object, detail?: string}[]} faults
 */
export function showFaults(faults) {
  for (const field of fields) {
    const own = faults.filter(fault => fault.field === field);
    const messages = [...new Set(own.map(inWords))];
    const shown = messages.slice(0, mostShown);
    const more = messages.length - shown.length;
    if (more > 0) {
      shown.push(sayCount('fault.more', more));
    }
    const place = byId(`${field}-fault`);
    const before = [...place.children].map(child => child.textContent);
    if (before.length !== shown.length || before.some((text, i) => text !== shown[i])) {
      place.replaceChildren(...shown.map(message => make('p', null, message)));
    }
    if (own.length > 0) {
      byId(field).setAttribute('aria-invalid', 'true');
      byId(field).closest('details')?.setAttribute('open', '');
    } else {
      byId(field).removeAttribute('aria-invalid');
    }
  }
}

/** A fault as a sentence. */
export function inWords({ code, values, detail, line }) {
  const numbers = Object.entries(values ?? {}).map(([name, value]) => [name, typeof value === 'number' ? showNumber(value) : value]);
  const fault = detail ?? say(`fault.${code}`, Object.fromEntries(numbers));
  return line === undefined ? fault : say('fault.line', { line, fault });
}
