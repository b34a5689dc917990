// The stages of temperature and time, as they are written.
import { rowsOf } from '../forms/rows.js';

/** @param {{hours: string, temperature: string}[]} stages as written; changed in place. */
export function stagesOf(stages, onChange) {
  return rowsOf(stages, {
    screen: 'time', first: 'hours', id: 'time-add', kind: 'stages', title: 'time.stages', hint: 'time.stages.hint', add: 'time.addStage', drop: 'time.dropStage',
    most: 50, blank: () => ({ hours: '', temperature: '' }), row: (_, { text }) => [text('hours'), text('temperature')],
  }, onChange).element;
}
