// From the form of a liquid to the body of POST /v1/brines, and from a pointer in its errors back to the field.
import { declared } from '../cure/declared.js';
import { Reading, withoutBlanks } from '../forms/reading.js';
import { blankRow } from './rows.js';

export const blank = {
  kind: 'injection', cut: 'pork-shoulder', product: '', skin: '', meat: '', pump: '10', liquid: '', retained: '', time: '', temperature: '', loss: '', bowl: '', target: '',
  green: '', pumped: '', drained: '', thickness: '', shape: 'slab', saltInMeat: '', vessel: '',
  rows: [{ ...blankRow, ingredient: 'water' }, { ...blankRow, ingredient: 'salt', form: 'table' }],
};

/** @returns {{request?: object, faults: object[], rows: number[], pieces: object[]}} `rows` are the places in the form of the request's lines. */
export function readBrine(written, settings) {
  const reading = new Reading(settings);
  const pieces = reading.pieces('brine-meat', written.meat);
  const meat = reading.sum('brine-meat', pieces);
  const own = written.kind === 'soak' ? soakIn(written, reading) : injectionIn(written, meat, reading);
  const skin = written.product === 'bacon' ? reading.amount('brine-skin', written.skin, '%') : undefined;
  const temperature = reading.measure('brine-temperature', written.temperature, 'temperature');
  const loss = reading.amount('brine-loss', written.loss, '%');
  const bowl = reading.amount('brine-bowl', written.bowl, 'kg');
  const reached = reading.amount('brine-target', written.target, 'g/kg');
  const rows = written.rows.map((row, i) => row.ingredient ? i : -1).filter(i => i >= 0);
  const lines = rows.map(i => lineOf(written.rows[i], i, reading));
  if (!meat || lines.length === 0 || reading.faults.length > 0) {
    return { faults: reading.faults, rows, pieces };
  }
  return {
    faults: [], rows, pieces,
    request: withoutBlanks({
      kind: written.kind, cut: written.cut || undefined, product: written.product || undefined, skin, ...meatIn(pieces, meat),
      ...own, temperature, loss, bowl, lines, targets: reached && [{ ingredient: 'sodium-chloride', reached }],
    }),
  };
}

// Pieces that are alike are told by their number; others each by its weight.
function meatIn(pieces, meat) {
  const [first] = pieces;
  return pieces.every(({ weight }) => weight.value === first.weight.value)
    ? { meat, pieces: pieces.length }
    : { pieceWeights: pieces.map(({ weight }) => weight) };
}

function injectionIn(written, meat, reading) {
  const [green, pumped, drained] = ['green', 'pumped', 'drained'].map(name => reading.weights(`brine-${name}`, written[name])?.weight);
  return {
    dose: reading.amount('brine-pump', written.pump, '%'),
    retained: reading.estimate('brine-retained', written.retained),
    weighedBack: green || pumped || drained ? { green: green ?? meat, pumped, drained } : undefined,
  };
}

function soakIn(written, reading) {
  const thickness = reading.length('brine-thickness', written.thickness);
  return {
    liquid: reading.amount('brine-liquid', written.liquid, 'L'),
    time: reading.measure('brine-time', written.time, 'time', 'h'),
    thickness, shape: thickness && written.shape,
    saltInMeat: reading.amount('brine-saltInMeat', written.saltInMeat, 'g/kg'),
    vessel: reading.amount('brine-vessel', written.vessel, 'L'),
  };
}

// A share written in % is one of the liquid; one of the water says so.
function lineOf(row, i, reading) {
  const { ingredient, form, amount } = row;
  const ofWater = /%\s*of\s+(the\s+)?water\s*$/i;
  const read = reading.amount(`brine-amount-${i}`, amount.replace(ofWater, '%').replace(/%\s*of\s+(the\s+)?liquid\s*$/i, '%'), 'g');
  const unit = read?.unit === '%' ? (ofWater.test(amount) ? '%-of-water' : '%-of-liquid') : read?.unit;
  return { ingredient, form: form || undefined, ...declared(row, additive => `brine-${additive}-${i}`, reading), amount: read && { value: read.value, unit } };
}

const members = ['cut', 'product', 'skin', 'meat', 'liquid', 'retained', 'time', 'temperature', 'loss', 'bowl', 'thickness', 'shape', 'saltInMeat', 'vessel'];

/** The field that an error of the API is about. */
export function fieldOf(pointer, rows) {
  const [, member, index, part] = pointer.split('/');
  if (member === 'lines') {
    return index === undefined ? 'brine-lines'
      : `brine-${{ ingredient: 'ingredient', form: 'form', nitriteFraction: 'nitrite', nitrateFraction: 'nitrate' }[part] ?? 'amount'}-${rows[Number(index)] ?? rows[0]}`;
  }
  if (member === 'weighedBack') {
    return `brine-${index ?? 'pumped'}`;
  }
  return { pieces: 'brine-meat', pieceWeights: 'brine-meat', dose: 'brine-pump', targets: 'brine-target', meatWater: 'brine-cut' }[member] ?? (members.includes(member) ? `brine-${member}` : 'brine-kind');
}
