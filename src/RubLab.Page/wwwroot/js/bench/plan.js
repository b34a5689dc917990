// The batch sheet of a purchase plan, as it would be written on the bench.
import { newLine, newTreatment } from '../kept/draft.js';
import { scaledIn } from '../words/bought.js';
import { showNumber, writeNumber } from '../words/numbers.js';
import { quantity } from '../words/show.js';

/**
 * @param {{pile: object[], treatments: object[]}} sheet a plan's batch sheet: its lines, what goes on, and a guest's whole portion.
 * @param {string} unit the kitchen's, kg or lb: in these a mark before three digits can only mean decimals.
 */
export function draftOf({ pile, treatments }, unit) {
  const lines = [];
  const keys = new Map();
  for (const { id, cut, count, weightEach, weightIs } of pile) {
    const planned = `${count} x ${scaledIn(weightEach, unit)}`;
    const line = { ...newLine(lines), cut, pile: planned, weightIs, planned };
    keys.set(id, line.key);
    lines.push(line);
  }
  const portion = pile.reduce((sum, line) => sum + (line.portion?.value ?? 0), 0);
  return {
    lines,
    ...(portion > 0 && { portion: showNumber(Math.round(portion)) }),
    treatments: treatments.map(({ formulaId, dose, retained, on }) => ({
      ...newTreatment(), formula: formulaId, dose: dose ? quantity(dose) : '', retained: retained ? partIn(retained) : '',
      on: on.length < lines.length ? on.map(id => keys.get(id)) : [],
    })),
  };
}

// One figure, or a band by its three, as the field reads them.
function partIn({ value, low, typical, high }) {
  return (value === undefined ? [low, typical, high] : [value]).map(writeNumber).join(' - ');
}
