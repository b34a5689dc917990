// The same computation as the server's, in this browser.

let exports;
const ingredients = new Map();

/** Starts the runtime and loads the reference data. */
export async function start() {
  const { dotnet } = await import('../_framework/dotnet.js');
  const { getAssemblyExports, getConfig } = await dotnet.create();
  exports = (await getAssemblyExports(getConfig().mainAssemblyName)).RubLab.Page.Exports;
  const names = JSON.parse(exports.Reference.FileNames());
  const files = await Promise.all(names.map(async name => [name, await textOf(`seed-data/${name}`)]));
  return exports.Reference.Load(JSON.stringify(Object.fromEntries(files)));
}

/** Every cut: `[{ id, name, species }]`. */
export function cuts() {
  return JSON.parse(exports.Reference.Cuts()).items;
}

/** An ingredient as the API gives it, by id. */
export function ingredient(id) {
  if (!ingredients.has(id)) {
    ingredients.set(id, JSON.parse(exports.Reference.Ingredient(id)));
  }
  return ingredients.get(id);
}

/**
 * What POST /v1/batch-sheets would answer.
 * @param {object} request its body.
 * @param {object} formulas the stored formulas it names, by id.
 * @returns {{ok?: object, errors?: object[]}}
 */
export function computeSheet(request, formulas) {
  return JSON.parse(exports.Sheets.Compute(JSON.stringify(request), JSON.stringify(formulas)));
}

async function textOf(path) {
  const answer = await fetch(path);
  if (!answer.ok) {
    throw new Error(`${path}: ${answer.status}`);
  }
  return answer.text();
}
