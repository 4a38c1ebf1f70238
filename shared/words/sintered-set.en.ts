import type { LayerSetNames, SinteredSetNames } from '../traveller/index.ts';
import { binderFlagWords, flagRatingWords } from './grade-limits.en.ts';

/** Names and methods that a proposal writes into a plan. */
export const sinteredSetNames: SinteredSetNames = {
  density: { name: 'Sintered density', method: 'ISO 3369' }, coercivity: { name: 'Coercivity', method: 'ISO 3326' },
  saturation: { name: 'Relative magnetic saturation', method: 'ASTM B886, IEC 60404-14' }, hardness: { name: 'Hardness', method: 'ISO 3878' },
  porosity: { A: { name: 'Porosity, type A', method: 'ISO 4499-4' }, B: { name: 'Porosity, type B', method: 'ISO 4499-4' }, C: { name: 'Free carbon, type C', method: 'ISO 4499-4' } },
  flags: {
    etaPhase: { name: binderFlagWords.etaPhase, method: 'polished section, lightly etched' }, freeCarbon: { name: binderFlagWords.freeCarbon, method: 'polished section, unetched' },
    binderLakes: { name: binderFlagWords.binderLakes, method: 'polished section' },
  },
  ratings: [flagRatingWords.none, flagRatingWords.traces, flagRatingWords.much],
  gauges: { density: 'density balance', coercivity: 'coercivity meter', hardness: 'hardness tester' },
};

/** The same for a coating judged layer by layer. */
export const layerSetNames: LayerSetNames = { total: 'Coating thickness', method: 'ISO 26423', gaugeKind: 'crater microscope' };
