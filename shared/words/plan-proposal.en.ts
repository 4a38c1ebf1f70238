import type { ProposalTexts } from '../traveller/index.ts';

/** The texts of a plan proposed from a designation: gates, methods and kinds as the trade commonly names them (common practice, no source). Benches are the plant's to change. */
export const planProposalTexts: ProposalTexts = {
  gates: {
    powder: { name: 'Powder', bench: 'Lab' }, pressing: { name: 'Pressing', bench: 'Press 2' }, sintered: { name: 'Sintered check', bench: 'Lab' }, dimensions: { name: 'Dimensions', bench: 'Gauge room' },
    edge: { name: 'Edge preparation', bench: 'Edge bench' }, coating: { name: 'Coating check', bench: 'Lab' }, 'final-visual': { name: 'Final visual', bench: 'Final visual 1' }, marking: { name: 'Marking', bench: 'Marking' },
  },
  sizes: {
    d: { name: 'Inscribed circle d', method: 'micrometer with nest', gaugeKind: 'micrometer' }, m: { name: 'Control dimension m', method: 'V nest and plunger, set with a master', gaugeKind: 'micrometer' },
    s: { name: 'Thickness s', method: 'micrometer', gaugeKind: 'micrometer' }, r: { name: 'Corner radius r', method: 'profile projector', gaugeKind: 'profile projector' },
  },
  measured: (method, measured) => `${method}; ${measured.when === 'beforeCoating' ? 'before coating' : `after coating of ${measured.coatingUm} µm`}`,
  weight: { name: 'Weight of every piece', method: 'in-line balance', gaugeKind: 'balance' },
  looks: {
    press: { name: 'Look under the lens', method: '8 to 10 ×', kinds: [{ code: 'PC', name: 'Crack in the green piece', class: 'critical' }, { code: 'PL', name: 'Lamination', class: 'critical' }, { code: 'PE', name: 'Chipped edge', class: 'major' }] },
    edge: { name: 'Edges at 40 ×', method: 'microscope', kinds: [{ code: 'MC', name: 'Micro-chip on the edge', class: 'major' }] },
    final: {
      name: 'Looks', method: 'eye and 10 ×, good light',
      kinds: [
        { code: 'CR', name: 'Crack', class: 'critical' }, { code: 'BC', name: 'Broken corner', class: 'critical' }, { code: 'CH', name: 'Chip on the cutting edge', class: 'major' }, { code: 'WG', name: 'Wrong geometry', class: 'major' },
        { code: 'ST', name: 'Stain', class: 'minor' }, { code: 'PT', name: 'Small pit off the edge', class: 'minor' },
      ],
    },
    marking: { name: 'Legible and in place', method: '10 ×', kinds: [{ code: 'IL', name: 'Illegible', class: 'major' }, { code: 'OP', name: 'Out of place', class: 'minor' }] },
  },
  marking: { name: 'Marked text', method: 'record', statement: (marking) => `Text on the first and the last piece reads ${marking}` },
};
