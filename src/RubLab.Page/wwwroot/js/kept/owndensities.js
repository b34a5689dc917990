// The densities a kitchen weighed itself.
import * as engine from '../engine.js';
import { OwnNumbers } from './ownnumbers.js';

export const ownDensities = () => new OwnNumbers({
  store: 'own', path: 'v1/densities', names: ['ingredient', 'form'], list: 'weighings',
  authored: ({ volume, weight }) => ({ volume: plain(volume), weight: plain(weight) }),
  use: engine.useDensities,
});

const plain = ({ value, unit }) => ({ value, unit });
