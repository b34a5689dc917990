// From the form on salting time to the body of POST /v1/salting-times, and from a pointer in its errors back to the field.
import { Reading, withoutBlanks } from '../forms/reading.js';

export const methods = ['dry-brine', 'soak', 'salt-bed'];
export const shapes = ['slab', 'cylinder', 'brick'];

export const blank = {
  method: 'dry-brine', cut: 'pork-shoulder', weight: '', thickness: '', faces: 'open', shape: '', width: '', length: '',
  salt: '', liquid: '', strength: '', meat: '',
  stages: [{ hours: '12 h', temperature: '4 C' }],
};

const gramsPerKilogram = { 'g/kg': 1, '%': 10 };

/**
 * @returns {{request: object, brine?: object, faults: object[], missing?: string, grams?: number}} `brine` is the body of POST /v1/brines
 * that a soak's liquid is looked up with; `missing` names what is still to be written; `grams` is the dose of salt, g/kg.
 */
export function readTime(written, settings) {
  const reading = new Reading(settings);
  const isSoak = written.method === 'soak';
  const weight = reading.weight('time-weight', written.weight);
  const thickness = reading.length('time-thickness', written.thickness);
  const [width, length] = hasSides(written) ? ['width', 'length'].map(side => reading.length(`time-${side}`, written[side])) : [];
  const stages = written.stages.map(({ hours, temperature }, i) => ({
    temperature: reading.measure(`time-temperature-${i}`, temperature, 'temperature'), time: reading.measure(`time-hours-${i}`, hours, 'time', 'h'),
  }));
  const soak = isSoak ? readSoak(written, weight, reading) : {};
  return {
    faults: reading.faults,
    missing: !written.weight.trim() && !written.thickness.trim() ? 'piece' : soak.missing,
    grams: written.method === 'dry-brine' ? readSalt(written, reading) : undefined,
    brine: soak.brine,
    request: withoutBlanks({
      method: written.method, cut: written.cut, shape: written.shape || undefined, weight, thickness, width, length,
      blockedFaces: written.faces === 'closed' ? ['thickness'] : undefined, stages,
    }),
  };
}

/** Whether the form asks for width and length. */
export function hasSides({ shape }) {
  return shape === '' || shape === 'brick';
}

function readSoak(written, pieceWeight, reading) {
  const liquid = reading.amount('time-liquid', written.liquid, 'L');
  const strength = reading.amount('time-strength', written.strength, '%');
  const meat = reading.weights('time-meat', written.meat)?.weight ?? (written.meat.trim() ? undefined : pieceWeight);
  const isWritten = written.liquid.trim() && written.strength.trim();
  return {
    missing: !isWritten ? 'liquid' : !written.meat.trim() && !written.weight.trim() ? 'meat' : undefined,
    brine: liquid && strength && meat && withoutBlanks({
      kind: 'soak', cut: written.cut, meat, liquid,
      lines: [{ ingredient: 'water' }, { ingredient: 'sodium-chloride', amount: { value: strength.value, unit: strength.unit === '%' ? '%-of-liquid' : strength.unit } }],
    }),
  };
}

function readSalt({ salt }, reading) {
  const read = reading.amount('time-salt', salt, 'g/kg');
  if (read && !gramsPerKilogram[read.unit]) {
    reading.faults.push({ field: 'time-salt', code: 'not-a-dose', values: { text: salt.trim() } });
    return undefined;
  }
  return read && read.value * gramsPerKilogram[read.unit];
}

const fields = {
  cut: 'cut', species: 'cut', diffusivity: 'cut', weight: 'weight', thickness: 'thickness', width: 'width', length: 'length', shape: 'shape',
  facesTreated: 'faces', blockedFaces: 'faces', liquidRatio: 'liquid',
};

/** The field that an error of the API is about. */
export function fieldOf(pointer) {
  const [, member, index = 0, part] = pointer.split('/');
  return member === 'stages' ? `time-${part === 'temperature' ? part : 'hours'}-${index}` : `time-${fields[member] ?? 'method'}`;
}

/** The field that an error about a soak's liquid is about. */
export function fieldOfLiquid(pointer) {
  const [, member] = pointer.split('/');
  return `time-${{ cut: 'cut', meatWater: 'cut', meat: 'meat', liquid: 'liquid', lines: 'strength' }[member] ?? 'liquid'}`;
}
