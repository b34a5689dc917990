// Small helpers for elements. Text goes in as text, never as markup.

export const byId = id => document.getElementById(id);

/** Makes an element; attributes that are null or false are left out. */
export function make(tag, attributes, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes ?? {})) {
    if (value !== null && value !== undefined && value !== false) {
      element.setAttribute(name, value === true ? '' : value);
    }
  }
  element.append(...children.flat().filter(child => child !== null && child !== undefined));
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
