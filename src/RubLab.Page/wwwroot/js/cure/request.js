// From the form of a cure to the body of a request, and from a pointer in its errors back to the field. What is put on or mixed in goes
// to POST /v1/cures; a pickle is a treatment of one line of meat and goes to POST /v1/batch-sheets, which weighs as carefully.
import { Reading, withoutBlanks } from '../forms/reading.js';
import { say } from '../words/texts.js';
import { additivesOf } from './additives.js';
import { declared } from './declared.js';
import { blankRow, canBeTarget } from './rows.js';

export const methods = ['dry', 'ground', 'injection', 'soak'];

export const blank = {
  method: 'dry', cut: '', product: '', skin: '', meat: '', step: '', pump: '10', retained: '', overage: '', liquid: '', time: '', temperature: '',
  rows: [{ ...blankRow }, { ...blankRow, ingredient: 'salt' }],
};

export const isLiquid = ({ method }) => method === 'injection' || method === 'soak';

/**
 * @returns {{request?: object, faults: object[], rows: number[], pieces: object[], targets: {line: number, additive?: string, reached: object}[]}}
 * `rows` are the places in the form of the request's lines. `targets` are the lines that are open for one; in a pickle they are found before it is asked for.
 */
export function readCure(written, settings) {
  const reading = new Reading(settings);
  const liquid = isLiquid(written);
  const pieces = reading.pieces('cure-meat', written.meat);
  const skin = written.product === 'bacon' ? reading.amount('cure-skin', written.skin, '%') : undefined;
  const step = reading.amount('cure-step', written.step, 'g');
  const places = written.rows.map((row, i) => row.ingredient ? i : -1).filter(i => i >= 0);
  const lines = places.map(i => lineOf(written.rows[i], i, reading, liquid));
  const common = { cut: written.cut || undefined, product: written.product || undefined, skin };
  const isComplete = written.cut !== '' && pieces.length > 0 && lines.length > 0;
  if (isComplete && written.method === 'soak' && written.liquid.trim() === '') {
    reading.faults.push({ field: 'cure-liquid', code: 'liquid-missing', values: {} });
  }
  const request = liquid
    ? pickle(written, common, pieces, lines, step, reading)
    : { ...common, method: written.method, meat: reading.sum('cure-meat', pieces), lines: lines.map(lineIn), targets: targetsIn(lines), weighingStep: step };
  const targets = lines.flatMap(({ additive, reached }, line) => reached ? [{ line, additive, reached }] : []);
  return {
    faults: reading.faults, rows: places, pieces, targets,
    request: isComplete && reading.faults.length === 0 ? withoutBlanks(request) : undefined,
  };
}

function lineOf(row, i, reading, liquid) {
  const isTarget = row.how === 'target' && canBeTarget(row, liquid);
  const [counted] = additivesOf(row.ingredient);
  const written = isTarget ? reading.amount(`cure-amount-${i}`, row.amount, counted ? 'ppm' : 'g/kg') : amountOf(row, i, reading, liquid);
  if (isTarget && row.amount.trim() === '') {
    reading.faults.push({ field: `cure-amount-${i}`, code: 'target-missing', values: {} });
  }
  return {
    ingredient: row.ingredient, ...declared(row, additive => `cure-${additive}-${i}`, reading), amount: isTarget ? undefined : written,
    reached: isTarget ? written : undefined, additive: counted ?? (row.ingredient === 'salt' ? 'sodium-chloride' : undefined),
  };
}

// A share of a pickle is one of its weight; one of its water says so.
function amountOf({ amount }, i, reading, liquid) {
  const ofWater = /%\s*of\s+(the\s+)?water\s*$/i;
  const read = reading.amount(`cure-amount-${i}`, amount.replace(ofWater, '%').replace(/%\s*of\s+(the\s+)?(liquid|pickle|meat)\s*$/i, '%'), 'g');
  return read?.unit === '%' && liquid ? { value: read.value, unit: ofWater.test(amount) ? '%-of-water' : '%-of-liquid' } : read;
}

const lineIn = ({ reached: _, additive: __, ...line }) => line;

function targetsIn(lines) {
  const targets = lines.filter(({ reached }) => reached).map(({ ingredient, additive, reached }) => ({ ingredient, additive, reached }));
  return targets.length > 0 ? targets : undefined;
}

function pickle(written, { cut, product, skin }, pieces, lines, step, reading) {
  const isSoak = written.method === 'soak';
  return {
    pile: [{ cut, product, skin, weightIs: 'green', pieces: pieces.map(({ weight }) => ({ weight })) }],
    treatments: [{
      // A soak goes by its liquid, which stands in place of any dose; the formula is not sound without one.
      formula: {
        name: say(`kind.${written.method}`), kind: written.method, lines: lines.map(lineIn),
        dose: isSoak ? { value: 100, unit: '%' } : reading.amount('cure-pump', written.pump, '%'),
      },
      retained: isSoak ? undefined : reading.estimate('cure-retained', written.retained),
      liquid: isSoak ? reading.amount('cure-liquid', written.liquid, 'L') : undefined,
      time: isSoak ? reading.measure('cure-time', written.time, 'time', 'h') : undefined,
      temperature: reading.measure('cure-temperature', written.temperature, 'temperature'),
    }],
    overage: reading.amount('cure-overage', written.overage, '%'),
    weighingStep: step ?? { value: 0.1, unit: 'g' },
  };
}

/** The field that an error of the API is about. */
export function fieldOf(pointer, { rows, targets }) {
  const [first, ...rest] = pointer.split('/').slice(1);
  if (first === 'treatments') {
    const [, member, ...inner] = rest;
    return member === 'formula' ? ofLiquid(inner, rows) : `cure-${member}`;
  }
  if (first === 'lines') {
    return ofLine(rest, rows);
  }
  if (first === 'targets') {
    return rest.length > 0 ? `cure-amount-${rows[targets[Number(rest[0])].line]}` : 'cure-lines';
  }
  const member = first === 'pile' ? rest[1] : first;
  return { cut: 'cure-cut', product: 'cure-product', skin: 'cure-skin', meat: 'cure-meat', pieces: 'cure-meat', weighingStep: 'cure-step', overage: 'cure-overage', method: 'cure-method' }[member] ?? 'cure-meat';
}

function ofLiquid([member, ...rest], rows) {
  return member === 'dose' ? 'cure-pump' : member === 'lines' ? ofLine(rest, rows) : 'cure-lines';
}

function ofLine([index, part], rows) {
  if (index === undefined) {
    return 'cure-lines';
  }
  const row = rows[Number(index)] ?? rows[0];
  return `cure-${{ ingredient: 'ingredient', nitriteFraction: 'nitrite', nitrateFraction: 'nitrate' }[part] ?? 'amount'}-${row}`;
}
