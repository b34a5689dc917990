// The cooking yields a kitchen recorded itself.
import * as engine from '../engine.js';
import { OwnNumbers } from './ownnumbers.js';

export const ownYields = () => new OwnNumbers({
  store: 'yields', path: 'v1/yields', names: ['cut'], list: 'records',
  authored: ({ date, method, before, beforeIs = 'green', trimLoss, after }) =>
    ({ date, method, before: plain(before), beforeIs, trimLoss: trimLoss && plain(trimLoss), after: plain(after) }),
  use: engine.useYields,
});

const plain = ({ value, unit }) => ({ value, unit });
