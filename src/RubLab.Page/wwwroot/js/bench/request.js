// From what stands on the bench to the body of POST /v1/batch-sheets, and from a pointer in its errors back to the field.
import { Reading } from '../forms/reading.js';
import { readNumber } from '../words/numbers.js';
import { readPile } from '../words/weights.js';
import { allTerms, termsOf } from './terms.js';

/**
 * @param {object} draft the bench as written, the kind of what goes on in each treatment.
 * @param {import('../kept/settings.js').Settings} settings
 * @returns {{request?: object, pieces: {written: string, line: number, at: number}[], faults: object[], missing: string[], treatments: number[], lines: number[], pile: object[]}}
 * no request while something is missing or a field other than a pile's weights cannot be read; weights that cannot be
 * read are left out of it. `treatments` and `lines` are the places in the draft that the request's stand for; `pile` is there without it.
 */
export function readDraft(draft, settings) {
  const faults = [];
  const number = (field, text, unit) => readField(faults, field, text, unit);
  const treatments = places(draft.treatments, treatment => treatment.formula || treatment.adjusted);
  const lines = places(draft.lines, line => line.cut || line.pile.trim());
  const pieces = [];
  const ids = idsOf(lines.map(i => draft.lines[i]));
  const pile = lines.map(i => readLine(draft.lines[i], i, { id: ids.get(draft.lines[i].key), number, faults, pieces, bareUnit: settings.bareUnit }));
  const missing = [
    treatments.length === 0 && 'formula',
    !pile.some(line => line.cut) && 'cut',
    pieces.length === 0 && 'pile',
  ].filter(Boolean);
  const reading = new Reading(settings);
  const put = treatments.map(t => readTreatment(draft.treatments[t], t, ids, number, reading));
  faults.push(...reading.faults);
  const overage = number('overage', draft.overage, '%');
  const portion = number('portion', draft.portion, 'g');
  const [bowlValue, bowlUnit] = settings.bowl.split(' ');
  const bowl = bowlUnit && { value: Number(bowlValue), unit: bowlUnit };
  const canCompute = missing.length === 0 && faults.every(fault => fault.field.startsWith('pile'));
  return {
    missing, faults, pieces, treatments, lines, pile,
    request: canCompute ? JSON.parse(JSON.stringify({
      pile, treatments: put, ...weighing(draft, settings), bowl: bowl || undefined, overage, portion,
    })) : undefined,
  };
}

function readLine(line, i, { id, number, faults, pieces, bareUnit }) {
  const read = readPile(line.pile, bareUnit, pieces.length);
  faults.push(...read.faults.map(fault => ({ field: `pile-${i}`, ...fault })));
  pieces.push(...read.pieces.map(piece => ({ ...piece, at: i })));
  if (!line.cut && read.pieces.length > 0 && i > 0) {
    faults.push({ field: `cut-${i}`, code: 'cut-missing' });
  }
  if (line.cut && read.pieces.length === 0 && i > 0) {
    faults.push({ field: `cut-${i}`, code: 'weights-missing' });
  }
  return {
    id,
    cut: line.cut,
    pieces: read.pieces.map(({ weight }) => ({ weight })),
    weightIs: line.weightIs,
    trimLoss: line.weightIs === 'purchase' ? number(`trimLoss-${i}`, line.trimLoss, '%') : undefined,
    addedSolution: number(`addedSolution-${i}`, line.addedSolution, '%'),
    product: line.product || undefined,
  };
}

function readTreatment(treatment, t, ids, number, reading) {
  const asked = termsOf(treatment.kind);
  const written = term => asked.includes(term) ? treatment[term] : '';
  const dose = number(`dose-${t}`, treatment.dose, '');
  const on = treatment.on.filter(key => ids.has(key)).map(key => ids.get(key));
  return {
    ...(treatment.adjusted ? { formula: treatment.adjusted } : { formulaId: treatment.formula }),
    dose: dose && { value: dose.value, unit: doseUnitOf(treatment.dose) },
    liquid: reading.amount(`liquid-${t}`, written('liquid'), 'L'),
    retained: reading.estimate(`retained-${t}`, written('retained')),
    applications: reading.count(`applications-${t}`, written('applications')),
    stage: written('stage') || undefined,
    time: reading.measure(`time-${t}`, written('time'), 'time', 'h'),
    temperature: reading.measure(`temperature-${t}`, written('temperature'), 'temperature'),
    on: on.length > 0 && on.length < ids.size ? on : undefined,
  };
}

// What findings call a line: its cut, counted where there are several of it.
function idsOf(lines) {
  const counts = new Map();
  return new Map(lines.map(({ key, cut }) => {
    const count = (counts.get(cut) ?? 0) + 1;
    counts.set(cut, count);
    return [key, count === 1 ? cut || key : `${cut}-${count}`];
  }));
}

const doseUnits = ['g/100cm2', 'g/kg', 'ppm', '%'];

function doseUnitOf(text) {
  return doseUnits.find(unit => text.includes(unit)) ?? 'g/kg';
}

function readField(faults, field, text, unit) {
  const written = doseUnits.concat(unit).reduce((rest, word) => word ? rest.replace(word, '') : rest, text);
  if (written.trim() === '') {
    return undefined;
  }
  const { value, other } = readNumber(written);
  if (value === undefined || other !== undefined) {
    faults.push({ field, code: value === undefined ? 'not-a-number' : 'either', values: { text: text.trim(), value, other, unit } });
    return undefined;
  }
  return { value, unit };
}

function weighing(draft, settings) {
  if (draft.weighingStep === 'scales' && settings.scales.length > 0) {
    return { scales: settings.scales };
  }
  const [value, unit] = (draft.weighingStep === 'scales' ? '1 g' : draft.weighingStep).split(' ');
  return { weighingStep: { value: Number(value), unit } };
}

function places(items, isGiven) {
  return items.map((item, i) => isGiven(item) ? i : -1).filter(i => i >= 0);
}

/** The field, and the line of its text, that an error of the API is about. */
export function placeOf(pointer, { pieces, treatments, lines, request }) {
  const [, group, index, member, at] = pointer.split('/');
  if (group === 'pile') {
    const i = lines[Number(index)] ?? 0;
    if (member === 'pieces' && at !== undefined) {
      const before = request.pile.slice(0, Number(index)).reduce((sum, line) => sum + line.pieces.length, 0);
      return { field: `pile-${i}`, line: pieces[before + Number(at)]?.line };
    }
    return { field: ['cut', 'trimLoss', 'addedSolution', 'product'].includes(member) ? `${member}-${i}` : `pile-${i}` };
  }
  if (group === 'treatments') {
    const t = treatments[Number(index)] ?? 0;
    return { field: allTerms.includes(member) ? `${member}-${t}` : `formula-${t}` };
  }
  return { field: ['overage', 'portion'].includes(group) ? group : ['weighingStep', 'scales', 'bowl'].includes(group) ? 'weighingStep' : 'formula-0' };
}
