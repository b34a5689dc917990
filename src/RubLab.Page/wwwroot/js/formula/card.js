// The card of a formula: its fields.
import { button, field, make, numberInput, selectOf } from '../dom.js';
import { formOptions, ingredientOptions, plain, worded } from '../forms/choices.js';
import { say } from '../words/texts.js';
import { bases, isBoiled, isLiquid, kinds, unitsFor } from './model.js';

const mostLines = 100;

/**
 * @param {object} card what is written; see model.js.
 * @param {{onAdd: () => void, onDrop: (i: number) => void}} on
 */
export function cardOf(card, { onAdd, onDrop }) {
  const text = make('input', { name: 'name', autocomplete: 'off', maxlength: 200 });
  text.value = card.name;
  const isArea = card.base === 'area';
  return make('form', { class: 'card', novalidate: true, 'aria-label': say('formula.card') },
    make('div', { class: 'pair' },
      field('name', say('formula.name'), text),
      field('kind', say('formula.kind'), selectOf('kind', worded(kinds, 'kind'), card.kind))),
    make('h3', null, say('formula.lines')),
    isLiquid(card.kind) ? make('p', { class: 'hint' }, say('formula.lines.liquid')) : null,
    make('ol', { class: 'lines' }, card.lines.map((line, i) => lineOf(line, i, card.kind, card.lines.length > 1 ? onDrop : null))),
    make('div', { class: 'fault', id: 'lines-fault' }),
    card.lines.length < mostLines ? button(say('formula.addLine'), onAdd, { class: 'plain', id: 'lines' }) : make('span', { id: 'lines' }),
    make('h3', null, say('formula.howMuch')),
    make('div', { class: 'pair' },
      field('dose', say('formula.dose'), numberInput('dose', card.dose), { hint: say('formula.dose.hint') }),
      isArea ? null : field('doseUnit', say('formula.doseUnit'), selectOf('doseUnit', plain(['g/kg', '%']), card.doseUnit))),
    field('base', say('formula.base'), selectOf('base', worded(bases, 'base'), card.base)),
    isBoiled(card.kind) ? field('reducedTo', say('formula.reducedTo'), numberInput('reducedTo', card.reducedTo), { hint: say('formula.reducedTo.hint') }) : null,
    make('details', { open: card.writtenFor !== '' },
      make('summary', null, say('formula.writtenFor')),
      make('div', { class: 'pair' },
        field('writtenFor', say('formula.writtenFor.weight'), numberInput('writtenFor', card.writtenFor)),
        field('writtenForUnit', say('formula.writtenFor.unit'), selectOf('writtenForUnit', plain(['lb', 'oz', 'kg', 'g']), card.writtenForUnit))),
      field('writtenForIs', say('form.weightIs'), selectOf('writtenForIs', worded(['green', 'purchase'], 'form.weightIs'), card.writtenForIs))));
}

function lineOf(line, i, kind, onDrop) {
  return make('li', null,
    field(`ingredient-${i}`, say('formula.ingredient'), selectOf(`ingredient-${i}`, ingredientOptions(), line.ingredient)),
    field(`form-${i}`, say('formula.form'), selectOf(`form-${i}`, formOptions(line.ingredient), line.form)),
    field(`amount-${i}`, say('formula.amount'), numberInput(`amount-${i}`, line.amount)),
    field(`unit-${i}`, say('formula.unit'), selectOf(`unit-${i}`, worded(unitsFor(kind, line.unit), 'unit'), line.unit)),
    make('p', { class: 'hint comes-to', id: `comes-${i}` }),
    make('details', { class: 'declared', open: Boolean(line.salt || line.nitrite || line.nitrate) },
      make('summary', null, say('formula.declared')),
      make('div', { class: 'pair' }, ['salt', 'nitrite', 'nitrate'].map(what =>
        field(`${what}-${i}`, say(`formula.declared.${what}`), numberInput(`${what}-${i}`, line[what]))))),
    onDrop ? button(say('form.takeOut'), () => onDrop(i), { class: 'plain', 'aria-label': say('formula.dropLine', { number: i + 1 }) }) : null);
}
