// An amount as a cook writes it, "1 1/2 cup" or "2,5 Tbsp.", read into a quantity.
import { measureSymbol } from '../kept/settings.js';
import { readNumber } from './numbers.js';

const words = {
  g: ['g', 'gr', 'gram', 'grams'], kg: ['kg', 'kilo', 'kilos'], mg: ['mg'], oz: ['oz', 'ounce', 'ounces'], lb: ['lb', 'lbs', 'pound', 'pounds', '#'],
  tsp: ['tsp', 'teaspoon', 'teaspoons', 't'], tbsp: ['tbsp', 'tablespoon', 'tablespoons', 'tbs', 'tb'], cup: ['cup', 'cups', 'c'],
  mL: ['ml', 'millilitre', 'millilitres', 'milliliter', 'milliliters'], L: ['l', 'litre', 'litres', 'liter', 'liters'],
  floz: ['floz', 'fl oz', 'fluid ounce', 'fluid ounces'], pt: ['pt', 'pint', 'pints'], qt: ['qt', 'quart', 'quarts'], gal: ['gal', 'gallon', 'gallons'],
  'g/kg': ['g/kg', 'g per kg'], '%': ['%', 'percent'], ppm: ['ppm'],
  'parts-by-mass': ['part', 'parts', 'parts by mass', 'parts by weight'], 'parts-by-volume': ['parts by volume', 'part by volume'],
};
const symbols = symbolsOf(words);
const lengths = symbolsOf({ mm: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'], cm: ['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'], in: ['in', 'inch', 'inches', '"', '″'] });
const halves = { '¼': '1/4', '½': '1/2', '¾': '3/4', '⅓': '1/3', '⅔': '2/3', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8' };
const written = /^([\d.,'’\u00a0\u202f ]*?\d|)\s*(?:(\d+)\s*\/\s*(\d+))?\s*(\D*)$/;

/**
 * Reads an amount.
 * @param {string} text
 * @param {string} measures how this kitchen's cups and spoons are: us, metric or au.
 * @param {string} [bare] the unit of a number that names none.
 * @param {Map<string, string>} [known] spellings and the units they mean.
 * @returns {{amount?: {value: number, unit: string}, code?: string, values?: object}}
 */
export function readAmount(text, measures, bare, known = symbols) {
  const plain = text.trim().replace(/[¼½¾⅓⅔⅛⅜⅝⅞]/g, mark => ` ${halves[mark]}`).trim();
  // "1/2" alone is a fraction, not a number followed by one.
  const [, whole, upper, lower, word] = (/^\d+\s*\/\s*\d+/.test(plain) ? written.exec(`0 ${plain}`) : written.exec(plain)) ?? [];
  if (whole === undefined || (whole === '' && upper === undefined)) {
    return { code: 'not-an-amount', values: { text: text.trim() } };
  }
  const { value, other } = readNumber(whole);
  const spelling = word.trim().replace(/\.$/, '').toLowerCase();
  const symbol = spelling === '' ? bare : known.get(spelling);
  if (value === undefined || (upper && Number(lower) === 0)) {
    return { code: 'not-an-amount', values: { text: text.trim() } };
  }
  if (!symbol) {
    return spelling === '' ? { code: 'unit-missing', values: { text: text.trim() } } : { code: 'unknown-measure', values: { unit: word.trim() } };
  }
  if (other !== undefined) {
    return { code: 'either', values: { text: text.trim(), value, other, unit: word.trim() } };
  }
  return { amount: { value: value + (upper ? Number(upper) / Number(lower) : 0), unit: measureSymbol(symbol, measures) } };
}

/** Reads a length, as readAmount reads an amount; a number alone is asked about. */
export function readLength(text) {
  return readAmount(text, '', undefined, lengths);
}

function symbolsOf(spelt) {
  return new Map(Object.entries(spelt).flatMap(([symbol, spellings]) => spellings.map(spelling => [spelling, symbol])));
}
