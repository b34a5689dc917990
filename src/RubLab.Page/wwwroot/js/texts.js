// Every text of the page that does not come with the reference data.
import { locale } from './numbers.js';

const texts = {
  'app.name': 'RubLab',
  'app.purpose': 'What to weigh, and how much goes on each piece.',
  'app.skip': 'Go to the batch sheet',
  'app.starting': 'Getting ready…',
  'app.failed': 'The page could not start. Load it again; if that does not help, this browser is too old for it.',
  'app.data': 'Reference data {version}',
  'app.not-kept': 'This browser does not keep what you enter; it is gone when the page closes.',
  'app.new-version': 'A new version of this page is ready.',
  'app.take-new-version': 'Use it now',

  'form.title': 'The pile',
  'form.formula': 'Formula',
  'form.formula.choose': 'Choose a formula',
  'form.cut': 'Cut',
  'form.cut.choose': 'Choose a cut',
  'form.pile': 'Weights, one a line',
  'form.pile.hint': 'As the scale shows them: {decimal} lb, {short} kg, 5200 g, 12 lb 6 oz. Several alike: 4 x {each} kg.',
  'form.bareUnit': 'Unit where a line names none',
  'form.weightIs': 'These weights are',
  'form.weightIs.green': 'Green: trimmed, as it will be seasoned',
  'form.weightIs.purchase': 'Purchase: as bought, before trimming',
  'form.trimLoss': 'Trim loss, % of purchase weight',
  'form.trimLoss.hint': 'Leave it empty if you do not know it yet: the sheet is then a plan.',
  'form.blank': '–',
  'form.more': 'Bare numbers are {bareUnit}, step {step}, {overage} % over, portion {portion} g',
  'form.weighingStep': 'Weighing step of the scale',
  'form.overage': 'Overage, % mixed beyond what goes on',
  'form.portion': 'Portion of cooked meat, g',

  'formulas.asking': 'Asking for the formulas…',
  'formulas.none': 'No formula is stored in this kitchen yet.',
  'formulas.offline': 'The server does not answer. These formulas are as of {when}.',
  'formulas.offline-none': 'The server does not answer, and no formula is kept on this device yet.',
  'formulas.refused': 'The server does not give its formulas to this page (answer {status}).',
  'formulas.fetching': 'Asking for this formula…',
  'formulas.older': 'The server has a newer revision of this formula but does not answer. The sheet is of revision {revision}.',
  'formulas.gone': 'The formula chosen before is no longer stored. Choose another.',
  'formulas.not-kept': 'This formula is not on this device yet, and the server does not answer.',

  'fault.line': 'Line {line}: {fault}',
  'fault.more.one': 'And {count} more line.',
  'fault.more.other': 'And {count} more lines.',
  'fault.unreadable': '“{text}” cannot be read as one weight.',
  'fault.unknown-unit': '“{unit}” is no unit of weight here. Use g, kg, oz or lb.',
  'fault.ounces': '“{text}” has 16 ounces or more beside the pounds.',
  'fault.no-count': '“{text}” counts no piece.',
  'fault.nothing': '“{text}” weighs nothing.',
  'fault.either': '“{text}” could be {value} or {other} {unit}. Write it without the mark between the digits, or with fewer decimals.',
  'fault.too-many': 'More than {most} pieces in all. This page takes no more; the API does.',
  'fault.not-a-number': '“{text}” is not a number.',

  'sheet.title': 'Batch sheet',
  'sheet.empty': 'To see the batch sheet:',
  'sheet.missing.formula': 'choose a formula',
  'sheet.missing.cut': 'choose a cut',
  'sheet.missing.pile': 'write a weight',
  'sheet.no-formula': 'The sheet appears when the formula has come.',
  'sheet.mend': 'Mend what is marked under “The pile” to see the batch sheet.',
  'sheet.left-out.one': '{count} line cannot be read and is not counted on this sheet.',
  'sheet.left-out.other': '{count} lines cannot be read and are not counted on this sheet.',
  'sheet.planned': 'A plan: the trim loss is not known yet.',
  'sheet.of': '{kind}, {dose} of {base}',
  'sheet.pieces.one': '{count} piece, {weight} green',
  'sheet.pieces.other': '{count} pieces, {weight} green',
  'sheet.totals': '{onMeat} on the meat, {toMix} to mix',
  'sheet.each': 'On each piece',
  'sheet.piece': 'Piece {number}',
  'sheet.piece.green': '{weight} green',
  'sheet.weigh': 'To weigh',
  'sheet.onMeat': 'On the meat',
  'sheet.toMix': 'To mix',
  'sheet.ingredient': 'Ingredient',
  'sheet.amount': 'Weigh',
  'sheet.runningTotal': 'Scale then shows',

  'base.green': 'green weight',
  'base.purchase': 'purchase weight',
  'base.cooked': 'cooked weight',
  'base.portion': 'portion',
  'base.area': 'surface',
  'kind.dry-brine': 'Dry brine',
  'kind.rub': 'Rub',
  'kind.slather': 'Slather',
  'kind.injection': 'Injection',
  'kind.soak': 'Soak',
  'kind.mop': 'Mop',
  'kind.sauce': 'Sauce',

  'salt.title': 'Salt ledger',
  'salt.perKgGreen': 'Salt in a kilogram of green meat',
  'salt.perKgCooked': 'Salt in a kilogram cooked',
  'salt.perPortion': 'Sodium in a portion, the meat’s own counted',
  'salt.band': 'from {low} to {high}',
  'salt.checks': 'Checks',
  'verdict.within': 'Inside: {measured}, range {range}',
  'verdict.below': 'Below: {measured}, range {range}',
  'verdict.above': 'Above: {measured}, range {range}',
  'verdict.cannot-tell': 'Across an end: {measured}, range {range}',
  'verdict.not-measured': 'No verdict',
  'range.between': '{low} to {high} {unit}',
  'range.from': '{low} {unit} and more',
  'range.to': 'up to {high} {unit}',
  'check.source': 'Source: {sourceId}, {locator} (confidence {confidence})',

  'findings.title': 'Findings',
  'findings.none': 'Nothing was noticed.',
  'severity.danger': 'Danger',
  'severity.warning': 'Warning',
  'severity.advice': 'Advice',
  'severity.info': 'Note',
  'cautions.title': 'Cautions',
  'cautions.defersTo': 'Go by: {who}',
};

const plurals = new Intl.PluralRules('en');

/** The text under a key, its {places} filled. */
export function say(key, values = {}) {
  const text = texts[key] ?? key;
  return text.replace(/\{(\w+)\}/g, (place, name) => values[name] ?? place);
}

/** The text for a count: its key ends in .one or .other. */
export function sayCount(key, count, values = {}) {
  return say(`${key}.${plurals.select(count)}`, { count: new Intl.NumberFormat(locale).format(count), ...values });
}

/** Puts its text into every element that names a key. */
export function fillTexts(root, values) {
  for (const element of root.querySelectorAll('[data-text]')) {
    element.textContent = say(element.dataset.text, values);
  }
}
