// What may be made of the meat: those the legal levels or ranges know that a cook would name.
import { products } from '../engine.js';
import { locale } from '../words/numbers.js';
import { say } from '../words/texts.js';

/** Options of a select; the first is of none. Another is any that is not named here. */
export function productOptions() {
  const named = products().filter(id => id !== 'other').map(value => ({ value, text: say(`product.${value}`) })).filter(({ value, text }) => text !== `product.${value}`);
  return [
    { value: '', text: say('cure.product.none') },
    ...named.toSorted((a, b) => a.text.localeCompare(b.text, locale)),
    { value: 'other', text: say('product.other') },
  ];
}
