// What stands on the bench, as it is written in the form on salting time.
import { readFormula } from '../engine.js';
import { locale } from '../words/numbers.js';

const nothingMeasured = { thickness: '', shape: '', width: '', length: '', faces: 'open' };

/**
 * @param {object} sheet what the bench computed: `{ read, formulas, answer }`.
 * @param {number} t which of its treatments.
 * @returns {object|undefined} the members of the form that follow from it; of the pieces the heaviest, which takes longest.
 */
export function fromBench({ read, formulas, answer }, t) {
  const treatment = answer?.treatments[t];
  if (!treatment?.pieces?.length) {
    return undefined;
  }
  const asked = read.request.treatments[t];
  const piece = treatment.pieces.reduce((heaviest, next) => next.greenWeight.value > heaviest.greenWeight.value ? next : heaviest);
  const line = read.request.pile.find(({ id }) => id === piece.line);
  return {
    ...nothingMeasured, method: treatment.kind, cut: line.cut,
    weight: line.weightIs === 'green' ? read.pieces[piece.number - 1].written : written(piece.greenWeight),
    ...(treatment.kind === 'soak' ? liquidOf(treatment, asked, formulas) : { salt: written(saltOf(answer, t, piece.line)) }),
    ...(asked.time && asked.temperature ? { stages: [{ hours: written(asked.time), temperature: written(asked.temperature) }] } : {}),
  };
}

function saltOf(answer, t, lineId) {
  const { entries } = answer.salt.find(({ line }) => line === lineId).ledger;
  return { value: entries.filter(({ treatment }) => treatment === t).reduce((sum, { salt }) => sum + salt.typical, 0), unit: 'g/kg' };
}

function liquidOf({ onMeat, pieces }, asked, formulas) {
  const formula = asked.formula ? readFormula(asked.formula).ok : formulas[asked.formulaId];
  const meat = pieces.reduce((sum, { greenWeight }) => sum + greenWeight.value, 0);
  return {
    liquid: written(onMeat), meat: written({ value: meat, unit: pieces[0].greenWeight.unit }),
    strength: formula?.saltShare ? written({ value: formula.saltShare.typical, unit: '%' }) : '',
  };
}

// As a cook writes it, and as it is read back without a doubt: no mark between thousands.
function written({ value, unit }) {
  const [shown, symbol] = unit === 'g' && value >= 1000 ? [value / 1000, 'kg'] : [value, unit];
  return `${new Intl.NumberFormat(locale, { useGrouping: false, maximumFractionDigits: 3 }).format(shown)} ${symbol}`;
}
