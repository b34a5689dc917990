// The answer for a sauce: of its card alone, for so many portions, or with the juices of the meat in the pot beside it.
import * as engine from '../engine.js';

const juice = 'cooking-juices';

/**
 * @param {{request: object, portions?: number, juices?: object}} read
 * @param {object} stored the formula as the server gave it.
 * @returns {{ok?: object, errors?: object[]}}
 */
export function answerFor({ request, portions, juices }, stored) {
  const formulas = { [request.formulaId]: stored };
  const card = forPortions(request, portions, formulas);
  const alone = engine.computeSauce(card, formulas);
  return juices && alone.ok ? engine.computeSauce(withJuices(card, alone.ok, juices, stored), {}) : alone;
}

// So many times what one of them weighs, which may hang on a density.
function forPortions(request, portions, formulas) {
  const one = portions === undefined ? undefined : engine.computeSauce(request, formulas).ok?.portion.weight.typical;
  return one === undefined ? request : { ...request, make: { value: Number((portions * one).toPrecision(6)), unit: 'g' } };
}

// The pot as it is weighed, so that its parts and a weight of juices are of one kind.
function withJuices({ formulaId: _, make: __, ...request }, { lines }, { amount, salt }, { name, kind, reducedTo, lines: written }) {
  return JSON.parse(JSON.stringify({
    ...request,
    formula: {
      name, kind, reducedTo, dose: { value: 100, unit: '%' },
      lines: [
        ...written.map(({ ingredient, form, salt: own, nitriteFraction, nitrateFraction }, i) => ({
          ingredient, form, salt: own, nitriteFraction, nitrateFraction, amount: { value: lines[i].intoPot.value, unit: 'g' },
        })),
        { ingredient: juice, salt, amount },
      ],
    },
  }));
}
