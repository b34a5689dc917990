// The answer for a sauce: of its card alone, for so many portions, or with the juices of the meat in the pot beside it.
import * as engine from '../engine.js';

const juice = 'cooking-juices';

/**
 * @param {{request: object, portions?: number, juices?: object}} read
 * @param {object} stored the formula as the server gave it.
 * @returns {{ok?: object, errors?: object[], faults?: object[]}}
 */
export function answerFor({ request, portions, juices }, stored) {
  const formulas = { [request.formulaId]: stored };
  const card = forPortions(request, portions, formulas);
  const alone = engine.computeSauce(card, formulas);
  if (!juices || !alone.ok) {
    return alone;
  }
  const withCard = part => engine.computeSauce(withJuices(card, alone.ok, juices, stored, part), {});
  return card.make ? asMuch(alone.ok.finished.value, withCard) : withCard(1);
}

// What is wanted holds the juices too. What the pot comes to goes in a straight line with how much of the card is in it.
function asMuch(wanted, withCard) {
  const [half, whole] = [withCard(0.5), withCard(1)];
  if (!half.ok || !whole.ok) {
    return whole.ok ? half : whole;
  }
  const part = 1 - 0.5 * (whole.ok.finished.value - wanted) / (whole.ok.finished.value - half.ok.finished.value);
  return part > 0 ? withCard(part) : { faults: [{ field: 'sauce-juices', code: 'juices-too-much', values: {} }] };
}

// So many times what one of them weighs, which may hang on a density.
function forPortions(request, portions, formulas) {
  const one = portions === undefined ? undefined : engine.computeSauce(request, formulas).ok?.portion.weight.typical;
  return one === undefined ? request : { ...request, make: { value: Number((portions * one).toPrecision(6)), unit: 'g' } };
}

// The pot as it is weighed, so that its parts and a weight of juices are of one kind.
function withJuices({ formulaId: _, make: __, ...request }, { lines }, { amount, salt }, { name, kind, reducedTo, lines: written }, part) {
  return JSON.parse(JSON.stringify({
    ...request,
    formula: {
      name, kind, reducedTo, dose: { value: 100, unit: '%' },
      lines: [
        ...written.map(({ ingredient, form, salt: own, nitriteFraction, nitrateFraction }, i) => ({
          ingredient, form, salt: own, nitriteFraction, nitrateFraction, amount: { value: lines[i].intoPot.value * part, unit: 'g' },
        })),
        { ingredient: juice, salt, amount },
      ],
    },
  }));
}
