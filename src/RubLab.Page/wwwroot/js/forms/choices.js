// What selects offer, as `{ value, text }`.
import { allIngredients, cuts, ingredient } from '../engine.js';
import { locale } from '../words/numbers.js';
import { say } from '../words/texts.js';

/** Things with a name of their own. */
export function named(items) {
  return items.map(({ id, name }) => ({ value: id, text: name }));
}

/** Values whose texts are under a key. */
export function worded(values, key) {
  return values.map(value => ({ value, text: say(`${key}.${value}`) }));
}

/** Values that say what they are, such as units. */
export function plain(values) {
  return values.map(value => ({ value, text: value }));
}

/** The cuts by name, or those that are `offered`. */
export function cutOptions(offered = cuts()) {
  return named(offered.toSorted((a, b) => a.name.localeCompare(b.name, locale)));
}

/** Options with none chosen before them. */
export function orNone(options, key) {
  return [{ value: '', text: say(key) }, ...options];
}

/** Every ingredient; none named first. */
export function ingredientOptions() {
  return orNone(named(allIngredients()), 'formula.ingredient.choose');
}

/** The forms of an ingredient; none named first. */
export function formOptions(id) {
  return orNone(named((id && ingredient(id)?.forms) || []), 'formula.form.open');
}
