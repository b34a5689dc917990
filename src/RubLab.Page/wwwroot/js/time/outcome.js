// How far the salt gets, as it is shown: the plain answer first, then its figures and curves, then what it rests on.
import { drawBand, niceEnd } from '../bands.js';
import { cautionsOf, findingsOf } from '../bench/remarks.js';
import { make } from '../dom.js';
import { source } from '../engine.js';
import { said } from '../words/said.js';
import { band, quantity, sourceOf } from '../words/show.js';
import { say } from '../words/texts.js';

const millimetresOfInch = 25.4;
const hoursOfDay = 24;
const inDaysFrom = 72;
const finest = 0.1;

/**
 * @param {object} answer of POST /v1/salting-times.
 * @param {object} context `plots`, the texts of the pictures; `even`, the salt once even as a band in g/kg, if known; `isInches`.
 */
export function outcomeOf(answer, { plots, even, isInches }) {
  const time = quantity(answer.time);
  return [
    make('section', { 'aria-labelledby': 'time-depth' },
      make('h3', { id: 'time-depth' }, say('time.after', { time })),
      make('p', { class: 'result' }, make('strong', { class: 'figure' }, inWords(answer.depth))),
      isInches ? make('p', null, say('time.inches', { band: band(scaled(answer.depth, 1 / millimetresOfInch, 'in', 2)) })) : null,
      make('p', null, answer.advice)),
    make('section', { 'aria-labelledby': 'time-figures' },
      make('h3', { id: 'time-figures' }, say('time.figures')),
      make('dl', { class: 'bands drawn' }, figuresOf(answer, even).map(drawn))),
    ...plots.map(plotOf),
    restsOf(answer),
    findingsOf(answer.findings),
    cautionsOf(answer.cautions),
  ].filter(Boolean);
}

// A dry brine's salt counts as taken up from the start: its uptake says nothing.
function figuresOf({ method, uptake, centreToMean, liquidStrength, timeTo }, even) {
  const percent = { unit: '%', max: 100 };
  const inMiddle = even && product(product(even, method === 'dry-brine' ? undefined : uptake), centreToMean);
  const most = niceEnd(timeTo.even95.high);
  return [
    { name: 'centre', figure: centreToMean, scale: percent },
    inMiddle && { name: 'salt-inside', figure: inMiddle, scale: { unit: 'g/kg', max: niceEnd(even.high) }, more: say('time.salt.even', { salt: band(even) }) },
    method === 'dry-brine' ? null : { name: 'uptake', figure: uptake, scale: percent },
    liquidStrength && { name: 'liquidStrength', figure: liquidStrength, scale: percent },
    { name: 'even50', figure: timeTo.even50, scale: { unit: 'h', max: most }, more: inDays(timeTo.even50) },
    { name: 'even95', figure: timeTo.even95, scale: { unit: 'h', max: most }, more: inDays(timeTo.even95) },
  ].filter(Boolean);
}

function drawn({ name, figure, scale, more }) {
  const label = say(`time.${name}`);
  const shown = rounded(figure);
  return make('div', { id: `time-figure-${name}` },
    make('dt', null, label),
    make('dd', null, make('strong', { class: 'figure' }, inWords(figure)), drawBand(shown, { ...scale, label }), more ? make('small', null, more) : null));
}

function inDays(hours) {
  return hours.high < inDaysFrom ? '' : inWords(scaled(hours, 1 / hoursOfDay, say('time.days')));
}

/** A band as a cook would say it. */
export function inWords(figure) {
  return figure.high < finest && figure.high > 0 ? say('time.under', { figure: quantity({ value: finest, unit: figure.unit }) }) : band(rounded(figure));
}

// What is below ten to a tenth, the rest to whole ones: no kitchen sees more.
function rounded({ low, typical, high, unit }) {
  const round = value => value < 10 ? Math.round(value / finest) * finest : Math.round(value);
  return { low: round(low), typical: round(typical), high: round(high), unit };
}

function scaled({ low, typical, high }, by, unit, digits = 15) {
  const [least, usual, most] = [low, typical, high].map(value => Number((value * by).toPrecision(digits)));
  return { low: least, typical: usual, high: most, unit };
}

// All of them rise with the speed of the salt and fall with the size, so their ends belong together.
function product(figure, percent) {
  return percent ? { low: figure.low * percent.low / 100, typical: figure.typical * percent.typical / 100, high: figure.high * percent.high / 100, unit: figure.unit } : figure;
}

function plotOf(text) {
  const picture = new DOMParser().parseFromString(text, 'image/svg+xml').documentElement;
  for (const words of picture.querySelectorAll('title, desc, text')) {
    words.textContent = said(words.textContent);
  }
  return make('figure', { class: 'plot' }, document.importNode(picture, true));
}

function restsOf({ diffusivity, findings }) {
  const others = [...new Set(findings.map(finding => finding.sourceId))].filter(id => id && id !== diffusivity.sourceId);
  return make('section', { class: 'rests' },
    make('h3', null, say('time.rests')),
    make('ul', null,
      make('li', null, sourceOf(diffusivity)),
      others.map(id => make('li', null, say('time.source', { title: source(id)?.title ?? id })))));
}
