// From what the cook entered to the body of POST /v1/batch-sheets, and from a pointer in its errors back to the field.
import { readNumber } from './numbers.js';
import { readPile } from './weights.js';

/**
 * @returns {{request?: object, pieces: {written: string, line: number}[], faults: {field: string, line?: number, code: string, values: object}[], missing: string[]}}
 * no request while something is missing or a field other than the pile cannot be read; a pile line that cannot be
 * read is left out of it.
 */
export function readDraft(draft) {
  const { pieces, faults: lineFaults } = readPile(draft.pile, draft.bareUnit);
  const faults = lineFaults.map(fault => ({ field: 'pile', ...fault }));
  const missing = [];
  if (!draft.formula) {
    missing.push('formula');
  }
  if (!draft.cut) {
    missing.push('cut');
  }
  if (pieces.length === 0) {
    missing.push('pile');
  }
  const read = (field, unit) => {
    if (draft[field].trim() === '') {
      return undefined;
    }
    const { value, other } = readNumber(draft[field].replace(unit, ''));
    if (value === undefined || other !== undefined) {
      const code = value === undefined ? 'not-a-number' : 'either';
      faults.push({ field, code, values: { text: draft[field].trim(), value, other, unit } });
      return undefined;
    }
    return { value, unit };
  };
  const trimLoss = draft.weightIs === 'purchase' ? read('trimLoss', '%') : undefined;
  const overage = read('overage', '%');
  const portion = read('portion', 'g');
  const [stepValue, stepUnit] = draft.weighingStep.split(' ');
  const canCompute = missing.length === 0 && faults.every(fault => fault.field === 'pile');
  return {
    missing,
    faults,
    pieces,
    request: canCompute ? {
      pile: [{ cut: draft.cut, pieces: pieces.map(({ weight }) => ({ weight })), weightIs: draft.weightIs, trimLoss }],
      treatments: [{ formulaId: draft.formula }],
      weighingStep: { value: Number(stepValue), unit: stepUnit },
      overage,
      portion,
    } : undefined,
  };
}

const fields = [
  [/^\/pile\/0\/cut/, 'cut'],
  [/^\/pile\/0\/trimLoss/, 'trimLoss'],
  [/^\/pile/, 'pile'],
  [/^\/treatments/, 'formula'],
  [/^\/weighingStep/, 'weighingStep'],
  [/^\/overage/, 'overage'],
  [/^\/portion/, 'portion'],
];

/** The field, and the line of the pile, that an error of the API is about. */
export function placeOf(pointer, pieces) {
  const piece = /^\/pile\/0\/pieces\/(\d+)/.exec(pointer);
  return {
    field: fields.find(([pattern]) => pattern.test(pointer))?.[1] ?? 'formula',
    line: piece ? pieces[Number(piece[1])]?.line : undefined,
  };
}
