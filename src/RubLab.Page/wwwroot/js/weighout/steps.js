// The steps of a weigh-out, in the order the hands work: every mix, then every portion cup, and only then the meat.
import { amount, meat, names, whither, writtenOf } from '../words/show.js';
import { say } from '../words/texts.js';

/**
 * @param {{read: object, answer: object}} sheet
 * @returns {{kind: 'trim' | 'weigh' | 'mix' | 'cup' | 'meat', treatment: number, name: string, what: string, note: string, amount: string, value?: number, unit?: string, shows?: string}[]}
 * all in words already, so that a weigh-out reads the same after any change of the page or its data.
 */
export function stepsOf({ read, answer }) {
  const step = read.request.weighingStep;
  const scale = piece => read.pieces[piece.number - 1].scale;
  const isPurchase = new Set(read.request.pile.filter(line => line.weightIs === 'purchase').map(line => line.id));
  const mixes = answer.treatments.flatMap((treatment, t) => mixing(treatment, t, step));
  const cups = answer.treatments.flatMap((treatment, t) => whither(treatment.kind) !== 'on' ? [] : treatment.pieces.map(piece => ({
    kind: 'cup', treatment: t, name: treatment.name,
    what: say('step.cup', { number: piece.number }),
    note: say(isPurchase.has(piece.line) ? 'step.cup.ofPurchase' : 'step.cup.of', {
      name: treatment.name, weight: writtenOf(piece, read), green: meat(piece.greenWeight, scale(piece)),
    }) + inGoes(treatment, piece.amount, step),
    amount: amount(piece.amount, step), value: piece.amount.value, unit: piece.amount.unit,
  })));
  const meats = answer.treatments.flatMap((treatment, t) => {
    const how = whither(treatment.kind);
    const first = {
      kind: 'meat', treatment: t, name: treatment.name,
      what: say('step.meat', { name: treatment.name }), note: say(how === 'on' && treatment.applications > 1 ? 'step.meat.on.goes' : `step.meat.${how}`, { count: treatment.applications }), amount: '',
      ...(how === 'around' ? { value: treatment.onMeat.value, unit: treatment.onMeat.unit } : {}),
    };
    return how === 'into' ? [first, ...treatment.pieces.map(piece => pumping(treatment, t, piece, { written: writtenOf(piece, read), scale: scale(piece), isOfPurchase: isPurchase.has(piece.line) }))] : [first];
  });
  return [...trimming(answer), ...mixes, ...cups, ...meats];
}

// A cup holds what goes on its piece in all its goes.
function inGoes({ applications }, { value, unit }, step) {
  return applications > 1 ? `, ${say('step.cup.goes', { count: applications, each: amount({ value: value / applications, unit }, step) })}` : '';
}

// What is planned is not to be weighed out unawares.
function trimming({ status, treatments: [{ name }] }) {
  return status === 'planned' ? [{ kind: 'trim', treatment: 0, name, what: say('step.trim'), note: say('step.trim.how'), amount: '' }] : [];
}

function pumping({ name }, t, { number, amount: { value, unit }, greenWeight, targetWeight }, { written, scale, isOfPurchase }) {
  return {
    kind: 'pump', treatment: t, name,
    what: say('sheet.piece', { number }), note: say(isOfPurchase ? 'step.pump.ofPurchase' : 'step.pump', { written, green: meat(greenWeight, scale) }),
    amount: meat(targetWeight, scale), value, unit,
  };
}

function mixing(treatment, t, step) {
  const bowls = treatment.bowls ?? [{ number: 1, toMix: treatment.toMix, lines: treatment.lines.map(line => line.toMix) }];
  const isLiquid = whither(treatment.kind) !== 'on';
  const mixed = bowls.flatMap(bowl => {
    let total = 0;
    const weighed = bowl.lines.map((quantity, i) => {
      const line = treatment.lines[i];
      const { name, form } = names(line);
      total += quantity.value;
      const shows = Number(total.toPrecision(12));
      return {
        kind: 'weigh', treatment: t, bowl: bowl.number, name: treatment.name, what: name, note: form, amount: amount(quantity, line.step ?? step),
        value: quantity.value, unit: quantity.unit, shows: amount({ value: shows, unit: quantity.unit }, step), isLiquid,
      };
    });
    return [...weighed, {
      kind: 'mix', treatment: t, bowl: bowl.number, name: treatment.name, what: say('step.mix'), note: bowls.length > 1 ? say('step.bowl', { number: bowl.number, count: bowls.length }) : '',
      amount: amount(bowl.toMix, step),
    }];
  });
  const { toMix, boilDownTo } = treatment;
  return boilDownTo ? [...mixed, {
    kind: 'boil', treatment: t, name: treatment.name, what: say('step.boil'), note: say('step.boil.how'), amount: meat(boilDownTo),
    value: Number((toMix.value - boilDownTo.value).toPrecision(12)), unit: toMix.unit,
  }] : mixed;
}

/** A step as one line to read aloud. */
export function aloud(step) {
  const shows = step.shows && step.shows !== step.amount ? ` ${say('step.shows', { total: step.shows })}.` : '';
  const said = `${[step.what, step.note].filter(Boolean).join(', ')}${step.amount && `: ${step.amount}`}`;
  return `${said.endsWith('.') ? said : `${said}.`}${shows}`;
}

/** What is left in each treatment's bowl: what was weighed in, less what boiled off, was filled into cups or went into the meat. */
export function leftInBowls(steps, done) {
  const left = new Map();
  steps.forEach((step, i) => {
    if (done[i] === 'done' && step.value !== undefined) {
      const held = left.get(step.treatment) ?? { name: step.name, unit: step.unit, value: 0, isLiquid: step.isLiquid };
      held.value += step.kind === 'weigh' ? step.value : -step.value;
      left.set(step.treatment, held);
    }
  });
  return [...left.values()].map(bowl => ({ ...bowl, value: Number(bowl.value.toPrecision(12)) }));
}
