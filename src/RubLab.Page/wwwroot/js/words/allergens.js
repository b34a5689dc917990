// What a treatment's ingredients carry by their nature, and whose labels are to be read, in words.
import { ingredient } from '../engine.js';
import { say } from './texts.js';

// Some names have a comma themselves.
const names = ids => ids.map(id => ingredient(id)?.name ?? id).join('; ');

/** The allergens alone; none where none is known. */
export function allergensOf({ allergens }) {
  return allergens.map(({ allergen }) => say(`allergen.${allergen}`)).join(', ');
}

/** The sentence that sends a cook to the packs; none where there is none to read. */
export function labelsToRead({ readYourLabel }) {
  return readYourLabel.length > 0 ? say('label.readYours', { names: names(readYourLabel) }) : '';
}

/** Everything a sheet says of them; none where there is nothing to say. */
export function allergensOnSheet(treatment) {
  const known = treatment.allergens.map(({ allergen, ingredients }) => say('sheet.allergen', { allergen: say(`allergen.${allergen}`), names: names(ingredients) })).join(', ');
  return [known && `${say('label.allergens')} ${known}.`, labelsToRead(treatment)].filter(Boolean).join(' ');
}
