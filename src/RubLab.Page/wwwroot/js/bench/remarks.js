// Findings and cautions.
import { make } from '../dom.js';
import { say } from '../words/texts.js';

const order = ['danger', 'warning', 'advice', 'info'];

/** What the computation noticed, the gravest first. */
export function findingsOf(findings) {
  const seen = new Set();
  const sorted = findings
    .filter(finding => !seen.has(finding.message) && seen.add(finding.message))
    .sort((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity));
  return make('section', { class: 'findings' },
    make('h3', null, say('findings.title')),
    sorted.length === 0
      ? make('p', null, say('findings.none'))
      : make('ul', null, sorted.map(finding => make('li', { class: finding.severity },
        make('strong', null, say(`severity.${finding.severity}`)), ' ', make('span', null, finding.message)))));
}

/** What must be said for safety, of a cure first. */
export function cautionsOf(all) {
  const isOfCure = ({ id }) => id.startsWith('cure-');
  const cautions = [...all.filter(isOfCure), ...all.filter(caution => !isOfCure(caution))];
  return cautions.length === 0 ? null : make('section', { class: 'cautions' },
    make('h3', null, say('cautions.title')),
    make('ul', null, cautions.map(caution => make('li', null,
      make('span', null, caution.text), ' ', make('small', null, say('cautions.defersTo', { who: caution.defersTo }))))));
}
