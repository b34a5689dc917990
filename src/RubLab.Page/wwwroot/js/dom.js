// Small helpers for elements. Text goes in as text, never as markup.

export const byId = id => document.getElementById(id);

/** Makes an element; attributes that are null or false are left out. */
export function make(tag, attributes, ...children) {
  return fill(document.createElement(tag), attributes, children);
}

/** Makes an element of a drawing. */
export function draw(tag, attributes, ...children) {
  return fill(document.createElementNS('http://www.w3.org/2000/svg', tag), attributes, children);
}

/** Makes a button. */
export function button(text, onClick, attributes) {
  const element = make('button', { type: 'button', ...attributes }, text);
  element.addEventListener('click', onClick);
  return element;
}

/** Fills a select, keeping what is chosen if it is still there. */
export function fillSelect(select, options, chosen) {
  select.replaceChildren(...options.map(({ value, text }) => {
    const option = make('option', { value }, text);
    option.selected = value === chosen;
    return option;
  }));
}

/** The head of a table. */
export function headOf(titles) {
  return make('thead', null, make('tr', null, titles.map(title => make('th', { scope: 'col' }, title))));
}

/** A figure under its title, and what stands beside it. */
export function figureOf(title, figure, ...beside) {
  return make('div', null, make('dt', null, title), make('dd', null, make('strong', { class: 'figure' }, figure), beside));
}

/** A field: its label, the control, a place for its faults, and a hint. */
export function field(id, label, control, { hint, described = '' } = {}) {
  control.id = id;
  const hintId = `${id}-hint`;
  control.setAttribute('aria-describedby', `${id}-fault${hint ? ` ${hintId}` : ''}${described && ` ${described}`}`);
  return make('div', { class: 'field' },
    make('label', { for: id }, label),
    control,
    make('div', { class: 'fault', id: `${id}-fault` }),
    hint ? make('p', { class: 'hint', id: hintId }, hint) : null);
}

/** A control for words and figures in one, such as "12 h". */
export function textInput(name, value, more) {
  return filled('input', name, value, more);
}

/** A control for a number. */
export function numberInput(name, value) {
  return textInput(name, value, { inputmode: 'decimal' });
}

/** A control for weights or the like, one a line. */
export function textArea(name, value, { rows = 3 } = {}) {
  return filled('textarea', name, value, { rows });
}

/** A select of options `{ value, text }`. */
export function selectOf(name, options, chosen) {
  const select = make('select', { name });
  fillSelect(select, options, chosen);
  return select;
}

function filled(tag, name, value, more) {
  const control = make(tag, { name, autocomplete: 'off', autocapitalize: 'off', spellcheck: 'false', ...more });
  control.value = value;
  return control;
}

function fill(element, attributes, children) {
  for (const [name, value] of Object.entries(attributes ?? {})) {
    if (value !== null && value !== undefined && value !== false) {
      element.setAttribute(name, value === true ? '' : value);
    }
  }
  element.append(...children.flat(Infinity).filter(child => child !== null && child !== undefined && child !== false));
  return element;
}
