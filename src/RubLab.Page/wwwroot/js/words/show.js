// Quantities of an answer in words.
import { cut, ingredient, source } from '../engine.js';
import { scaledIn } from './bought.js';
import { decimalsOf, showEstimate, showFixed, showNumber } from './numbers.js';
import { say } from './texts.js';

// A figure and its unit stay on one line.
const space = '\u00a0';

/** An amount to weigh: with the decimals of the step it is weighed in, or those it has. */
export function amount(quantity, step) {
  const decimals = step ? decimalsOf(step.value) : Math.min(3, decimalsOf(quantity.value));
  return `${showFixed(quantity.value, decimals)}${space}${quantity.unit}`;
}

const larger = { g: { unit: 'kg', of: 1000 }, oz: { unit: 'lb', of: 16 } };

/** A weight of meat: as the scale shows it that the meat was read off, or else in the larger unit where it makes one up. */
export function meat({ value, unit }, scale = 'kg') {
  const next = larger[unit];
  if (scale !== 'kg') {
    return scaledIn({ value, unit }, scale);
  }
  return next && value >= next.of ? scaledIn({ value, unit }, next.unit) : quantity({ value, unit });
}

/** The scale a whole pile was read off. */
export function scaleOf(pieces) {
  const scales = new Set(pieces.map(piece => piece.scale));
  return scales.size === 1 ? [...scales][0] : scales.has('kg') ? 'kg' : 'lb';
}

/** A figure as it stands. */
export function quantity({ value, unit }) {
  return `${showNumber(value)}${space}${unit}`;
}

/** A dose; one that was worked out from spoons has more digits than anybody weighs. */
export function doseOf({ value, unit }) {
  return quantity({ value: Number(value >= 1 ? value.toFixed(2) : value.toPrecision(3)), unit });
}

/** An amount as a formula's line has it, its unit in words. */
export function lineAmount({ value, unit }) {
  return `${showNumber(value)}${space}${say(`unit.${unit}`)}`;
}

/** A piece's weight as it was written, after its cut where the pile has several. */
export function writtenOf({ number, line }, { request: { pile }, pieces }) {
  const { written } = pieces[number - 1];
  return pile.length > 1 ? say('sheet.piece.of', { cut: cut(pile.find(other => other.id === line).cut).name, written }) : written;
}

/** What a treatment is, when it goes on, how much of it and how often. */
export function useOf({ kind, stage, dose, base, applications }) {
  const named = say(`kind.${kind}`);
  const use = say('sheet.of', {
    kind: stage ? say('sheet.stage', { kind: named, stage: say(`form.stage.${stage}`) }) : named, dose: doseOf(dose), base: say(`base.${base}`),
  });
  return applications > 1 ? `${use}. ${say('sheet.applications', { count: applications })}` : use;
}

/** Where a treatment of this kind goes: on the meat, into it, or around it. */
export function whither(kind) {
  return { injection: 'into', soak: 'around' }[kind] ?? 'on';
}

/** An uncertain figure. */
export function estimate(value, unit) {
  return `${showEstimate(value)}${space}${unit}`;
}

/** A band: one figure where its ends are one. */
export function band({ low, typical, high, unit }) {
  return low === high ? estimate(typical, unit) : `${showEstimate(low)} – ${estimate(high, unit)}`;
}

/** The ends of a band, for a sentence that joins them. */
export function ends({ low, high, unit }) {
  return { low: showEstimate(low), high: estimate(high, unit) };
}

/** An ingredient's name and its form's, as far as they are known. */
export function names({ ingredient: id, form: formId }) {
  const known = ingredient(id);
  return { name: known?.name ?? id, form: known?.forms.find(candidate => candidate.id === formId)?.name ?? '' };
}

/** Where a figure is from; the key is of a sentence that names its source. */
export function sourceOf({ sourceId, locator, confidence }, key = 'check.source') {
  return say(key, { sourceId: source(sourceId)?.title ?? sourceId, locator, confidence: say(`confidence.${confidence}`) });
}
