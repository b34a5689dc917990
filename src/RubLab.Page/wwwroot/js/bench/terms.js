// What a treatment can be told besides its formula, by the kind of that formula. What is written for another kind is kept, and not asked about.

const dry = ['dose', 'retained', 'applications', 'stage'];
const terms = { injection: ['dose', 'retained', 'applications', 'temperature'], soak: ['dose', 'liquid', 'time', 'temperature'] };

/** All of them, in the order they are asked. */
export const allTerms = ['dose', 'liquid', 'retained', 'applications', 'stage', 'time', 'temperature'];

/** When a treatment can go on, as the API calls it. */
export const stages = ['before', 'during', 'wrap', 'after'];

/** Those of one kind. */
export function termsOf(kind) {
  return terms[kind] ?? dry;
}

/** The kind of what a treatment puts on; undefined while it has no formula that is known. */
export function kindOf({ formula, adjusted }, items) {
  return adjusted?.kind ?? items.find(item => item.id === formula)?.kind;
}
