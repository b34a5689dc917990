// Numbers as the reader writes them, read and shown.

export const locale = navigator.language;

const parts = new Intl.NumberFormat(locale).formatToParts(1234567.5);
const groupMark = parts.find(part => part.type === 'group')?.value ?? '';

const spaces = '[ \\u00a0\\u202f\'\\u2019]';
const plain = /^\d*[.,]?\d+$/;
const spaced = new RegExp(`^\\d{1,3}(?:${spaces}\\d{3})+(?:[.,]\\d+)?$`);
const grouped = /^\d{1,3}(?:([.,])\d{3})(?:\1\d{3})*(?:(?!\1)[.,]\d+)?$/;
const couldBeEither = /^[1-9]\d{0,2}[.,]\d{3}$/;

/**
 * Reads a number without its unit. Comma and point both mark decimals, unless only the thousands can be meant.
 * @returns {{value?: number, other?: number}} no value where it cannot be read; `other` is the reading with the
 * mark taken for thousands, where the reader's own locale writes thousands so.
 */
export function readNumber(text) {
  const written = text.trim();
  if (couldBeEither.test(written)) {
    const mark = /[.,]/.exec(written)[0];
    const value = Number(written.replace(mark, '.'));
    return mark === groupMark ? { value, other: Number(written.replace(mark, '')) } : { value };
  }
  if (plain.test(written)) {
    return { value: Number(written.replace(',', '.')) };
  }
  if (spaced.test(written)) {
    return { value: Number(written.replace(new RegExp(spaces, 'g'), '').replace(',', '.')) };
  }
  const groups = grouped.exec(written);
  return groups ? { value: Number(written.replaceAll(groups[1], '').replace(',', '.')) } : {};
}

/** Shows a number with the decimals it has, up to a millionth. */
export function showNumber(value) {
  return new Intl.NumberFormat(locale, { maximumFractionDigits: 6 }).format(value);
}

/** Shows a number with exactly this many decimals, so that figures stand under each other. */
export function showFixed(value, decimals) {
  return new Intl.NumberFormat(locale, { minimumFractionDigits: decimals, maximumFractionDigits: decimals }).format(value);
}

/** Shows an uncertain number: three significant digits. */
export function showEstimate(value) {
  return new Intl.NumberFormat(locale, { maximumSignificantDigits: 3 }).format(value);
}

/** How many decimals a step needs: 0.05 needs two. */
export function decimalsOf(step) {
  const [, decimals = ''] = String(step).split('.');
  return decimals.length;
}

/** A number as the reader would write it in a field: no mark that could be of thousands. */
export function writeNumber(value) {
  return new Intl.NumberFormat(locale, { useGrouping: false, maximumFractionDigits: 6 }).format(value);
}

/** A point in time. */
export function moment(at) {
  return new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short' }).format(new Date(at));
}
