// Checks of an answer in words.
import { checkOf } from './bench/salt.js';
import { make } from './dom.js';
import { say } from './words/texts.js';

/** Checks of salt, those of a day folded away. */
export function checksOf(checks) {
  const daily = checks.filter(check => check.base === 'portion');
  const others = checks.filter(check => check.base !== 'portion' && check.additive === undefined);
  return [
    others.length > 0 ? make('section', { class: 'salt' }, make('h3', null, say('salt.checks')), make('ul', { class: 'checks' }, others.map(check => checkOf(check, [])))) : null,
    daily.length > 0 ? make('details', null, make('summary', null, say('salt.day')), make('ul', { class: 'checks' }, daily.map(check => checkOf(check, [])))) : null,
  ].filter(Boolean);
}
