import type { SkipSlip, TableSlip } from '../traveller/index.ts';
import type { Said } from './said.ts';
import type { Speak } from './speak.ts';
import type { WordsFor } from './words-for.ts';

/** Slips of own tables and of the skip-lot count. */
export const samplingSlipWords: WordsFor<TableSlip | SkipSlip, 'type', Said, [Speak]> = {
  tableLoaded: ({ table, reason }, { labels }) => ({ sentence: `Own table ${table.id}, ${table.name}, loaded for ${labels.severities[table.severity]} inspection: ${reason}`, lines: [] }),
  skipStarted: ({ clearance, oneIn }, { format }) => ({ sentence: `Skip-lot count begins: after ${format.count(clearance)} lots accepted in a row, one in ${format.count(oneIn)} is inspected`, lines: [] }),
  skipRecounted: ({ lot, accepted }) => ({ sentence: `Lot ${lot} counted anew after a correction: ${accepted ? 'accepted' : 'not accepted'}`, lines: [] }),
  skipCounted: ({ lot, accepted, skipped }) => ({ sentence: skipped ? `Lot ${lot} passed over` : `Lot ${lot} ${accepted ? 'accepted' : 'not accepted: every lot is inspected again'}`, lines: [] }),
};
