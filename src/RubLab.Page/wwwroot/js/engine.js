// The same computation as the server's, in this browser.
import { runtime } from './runtime.js';
import { answerFrom, referenceFrom } from './words/said.js';

let exports;
let ingredients = new Map();
let all;
let sourceList;

/** Loads the reference data, and gives its edition. */
export async function start() {
  const { getAssemblyExports, getConfig } = await runtime;
  exports = (await getAssemblyExports(getConfig().mainAssemblyName)).RubLab.Page.Exports;
  return exports.Reference.Load();
}

/** Every cut: `[{ id, name, species }]`. */
export function cuts() {
  return referenceFrom(exports.Reference.Cuts()).items;
}

/** A cut as the API gives it, by id. */
export function cut(id) {
  return referenceFrom(exports.Reference.Cut(id));
}

/** Every ingredient: `[{ id, name, group, forms }]`, by name. */
export function allIngredients() {
  all ??= referenceFrom(exports.Reference.Ingredients()).items.toSorted((a, b) => a.name.localeCompare(b.name));
  return all;
}

/** An ingredient as the API gives it, by id. */
export function ingredient(id) {
  if (!ingredients.has(id)) {
    ingredients.set(id, referenceFrom(exports.Reference.Ingredient(id)));
  }
  return ingredients.get(id);
}

/** The sodium an authority sets for a day, mg, by the id of the check against it. */
export function sodiumOfADay(id) {
  return exports.Reference.SodiumOfADay(id);
}

/** A source by id. */
export function source(id) {
  sourceList ??= new Map(JSON.parse(exports.Reference.Sources()).items.map(item => [item.id, item]));
  return sourceList.get(id);
}

/**
 * What POST /v1/batch-sheets would answer.
 * @param {object} request its body.
 * @param {object} formulas the stored formulas it names, by id.
 * @returns {{ok?: object, errors?: object[]}}
 */
export function computeSheet(request, formulas) {
  return answerFrom(exports.Sheets.Compute(JSON.stringify(request), JSON.stringify(formulas)));
}

/** What POST /v1/salt-checks would answer: the ledger of one line, its weights not needed. */
export function checkSalt(request, formulas) {
  return answerFrom(exports.Sheets.CheckSalt(JSON.stringify(request), JSON.stringify(formulas)));
}

/** What GET /v1/formulas/{id} would answer for a formula that is not stored yet. */
export function readFormula(authored) {
  return answerFrom(exports.Formulas.Read(JSON.stringify(authored)));
}

/** What POST /v1/formula-changes would answer. */
export function changeFormula(request) {
  return answerFrom(exports.Formulas.Change(JSON.stringify(request)));
}

/** What POST /v1/conversions would answer for one item: `{ conversion?, errors? }`. */
export function convert(item) {
  const { ok, errors } = answerFrom(exports.Measuring.Convert(JSON.stringify({ items: [item] })));
  return ok ? ok.items[0] : { errors };
}

/** What PUT /v1/densities/{ingredient}/{form} would answer. */
export function weigh(ingredientId, form, weighings) {
  return answerFrom(exports.Measuring.Weigh(ingredientId, form, JSON.stringify({ weighings })));
}

/** What POST /v1/brines would answer. */
export function computeBrine(request) {
  return answerFrom(exports.Liquids.Brine(JSON.stringify(request)));
}

/** What POST /v1/salting-times would answer. */
export function computeSalting(request) {
  return answerFrom(exports.Timing.Salting(JSON.stringify(request)));
}

/** The picture POST /v1/salting-times?plot= would give of the request last computed: `profile` or `uptake`, as the text of an SVG. */
export function plotSalting(request, plot, isNarrow) {
  return exports.Timing.Plot(JSON.stringify(request), plot, isNarrow);
}

/** What POST /v1/cures would answer. */
export function computeCure(request) {
  return answerFrom(exports.Curing.Compute(JSON.stringify(request)));
}

/** The ids of the products that ranges and legal levels are of. */
export function products() {
  return JSON.parse(exports.Curing.Products());
}

/** What must be said wherever there is a cure, as answers have it. */
export function cureCautions() {
  return answerFrom(exports.Curing.Cautions());
}

/** Sodium nitrite as potassium nitrite, ppm. */
export function asPotassiumNitrite(ppm) {
  return exports.Curing.AsPotassiumNitrite(ppm);
}

/** What POST /v1/sauces would answer; `formulas` as for computeSheet. */
export function computeSauce(request, formulas) {
  return answerFrom(exports.Liquids.Sauce(JSON.stringify(request), JSON.stringify(formulas)));
}

/** What POST /v1/purchase-plans would answer; `formulas` as for computeSheet. */
export function planPurchase(request, formulas) {
  return answerFrom(exports.Purchases.Plan(JSON.stringify(request), JSON.stringify(formulas)));
}

/** What POST /v1/shopping-lists would answer; `formulas` as for computeSheet. */
export function listShopping(request, formulas) {
  return answerFrom(exports.Purchases.Shop(JSON.stringify(request), JSON.stringify(formulas)));
}

/** What POST /v1/portion-counts would answer. */
export function countPortions(request) {
  return answerFrom(exports.Purchases.Count(JSON.stringify(request)));
}

/** What PUT /v1/yields/{cut} would answer. */
export function recordCooks(cutId, records) {
  return answerFrom(exports.Cooking.Record(cutId, JSON.stringify({ records })));
}

/** The codes of all currencies. */
export function currencies() {
  return JSON.parse(exports.Reference.Currencies());
}

/** Takes the kitchen's own cooking yields in place of the reference's. */
export function useYields(yields) {
  exports.Cooking.Use(JSON.stringify(yields.map(({ cut: id, records }) => ({ cut: id, records }))));
}

/** Takes the kitchen's own densities in place of the reference's. */
export function useDensities(densities) {
  exports.Measuring.Use(JSON.stringify(densities.map(({ ingredient: id, form, weighings }) => ({ ingredient: id, form, weighings }))));
  ingredients = new Map();
}
