// Messages beside the fields they are about.
import { button, byId, make } from '../dom.js';
import { showNumber } from '../words/numbers.js';
import { say, sayCount } from '../words/texts.js';

const mostShown = 8;

/**
 * Shows every fault beside its field and clears the rest.
 * @param {Element} root where the fields are; each has a place `{id}-fault`.
 * @param {{field: string, line?: number, code?: string, values?: object, detail?: string, choices?: string[], mendings?: {text: string, change: string, apply: () => void}[]}[]} faults
 * @param {(fault: object, choice: string) => void} [choose] called when the cook takes one of a fault's choices.
 */
export function showFaults(root, faults, choose) {
  for (const place of root.querySelectorAll('.fault')) {
    const field = place.id.replace(/-fault$/, '');
    const own = faults.filter(fault => fault.field === field);
    const before = place.dataset.said ?? '';
    const said = JSON.stringify(own.map(fault => [inWords(fault), fault.choices, fault.mendings?.map(({ text, change }) => [text, change])]));
    if (before !== said) {
      place.dataset.said = said;
      place.replaceChildren(...messages(own, choose));
    }
    const element = byId(field);
    if (own.length > 0) {
      element.setAttribute('aria-invalid', 'true');
      element.closest('details')?.setAttribute('open', '');
    } else {
      element.removeAttribute('aria-invalid');
    }
  }
}

function messages(faults, choose) {
  const said = new Map(faults.map(fault => [inWords(fault), fault]));
  const shown = [...said].slice(0, mostShown).flatMap(([text, fault]) => [
    make('p', null, text),
    fault.choices && choose ? make('div', { class: 'choices' }, fault.choices.map(choice => button(choice, () => choose(fault, choice), { class: 'plain' }))) : null,
    fault.mendings?.length > 0 ? make('div', { class: 'mendings' }, fault.mendings.map(mendingOf)) : null,
  ]).filter(Boolean);
  const more = said.size - mostShown;
  return more > 0 ? [...shown, make('p', null, sayCount('fault.more', more))] : shown;
}

/** What would mend it, at a tap, and what that comes to. */
export function mendingOf({ text, change, apply }) {
  return make('div', { class: 'mending' }, button(text, apply), change ? make('p', { class: 'hint' }, change) : null);
}

/** A fault as a sentence. */
export function inWords({ code, values, detail, line }) {
  const numbers = Object.entries(values ?? {}).map(([name, value]) => [name, typeof value === 'number' ? showNumber(value) : value]);
  const fault = detail ?? say(`fault.${code}`, Object.fromEntries(numbers));
  return line === undefined ? fault : say('fault.line', { line, fault });
}
