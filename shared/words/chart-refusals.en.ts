import { chartNames } from './chart-signal.en.ts';
import type { RefusalWords } from './told-refusal.ts';

const unfit = {
  kind: 'a chart of counts needs something that is counted, any other something that is measured', rules: 'at least one rule is switched on, and each only once',
  constants: 'lambda lies from 0.01 to 1, its width from 0.5 to 10, k from 0 to 5, h from 0.5 to 50',
} as const;

/** Refusals about control charts. */
export const chartRefusalWords = {
  chartUnfit: ({ characteristic, why }) => ({ happened: `${characteristic} cannot have this chart: ${unfit[why]}.`, kept: 'No chart was changed.', next: 'Choose another kind of chart, or put these numbers right.' }),
  chartLimitsFrozen: ({ chart }) => ({ happened: `The limits of chart ${chart} are frozen, and other constants would make them mean something else.`, kept: 'Chart and limits stay as they are.', next: 'Unfreeze the limits by signature first, then change the chart and freeze them anew.' }),
  chartBaseUnfit: ({ why, have, least }, { format }) => ({
    happened: `No limits can be drawn from these lots: ${chartNames.baseFaults[why]}${least === 0 ? '' : ` (${format.count(have)} of at least ${format.count(least)})`}.`,
    kept: 'The limits stay as they were.', next: 'Choose other lots, or wait until there are more.',
  }),
} satisfies Partial<RefusalWords>;
