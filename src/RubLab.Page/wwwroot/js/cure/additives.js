// Additives with a legal limit: which an ingredient carries, and what they are called.
import { ingredient } from '../engine.js';
import { say } from '../words/texts.js';

const cureOf = { nitrite: true, nitrate: true };

/** Whether an ingredient is sold as a cure, so that its pack declares what it carries. */
export function isOfCures(id) {
  return ingredient(id)?.group === 'cure';
}

/** The additives of an ingredient, the one it is used for first; a cure whose content only its pack knows has nitrite. */
export function additivesOf(id) {
  const known = ingredient(id);
  const carried = (known?.limitedAdditives ?? []).map(({ additive }) => additive).filter(additive => additive !== 'water');
  const sorted = carried.toSorted((a, b) => Number(b === 'nitrite') - Number(a === 'nitrite'));
  return sorted.length === 0 && known?.group === 'cure' ? ['nitrite'] : sorted;
}

/** Whether it carries nitrite or nitrate. */
export function isCure(id) {
  return additivesOf(id).some(additive => cureOf[additive]);
}

/** What the reference knows that a pack must declare, and what it may. */
export function declaredOf(id) {
  if (!isOfCures(id)) {
    return [];
  }
  const known = ingredient(id).limitedAdditives.map(({ additive }) => additive);
  return known.length === 0
    ? [{ additive: 'nitrite', isRequired: true }, { additive: 'nitrate', isRequired: false }]
    : known.toSorted().reverse().map(additive => ({ additive, isRequired: true }));
}

/** Its name. */
export function nameOf(additive) {
  return say(`additive.${additive}`);
}
