/** What the history of a plan says: its versions, what changed, the lots under each, its export. */
export const planVersionsWords = {
  compare: 'Compare the risks', compareClass: (findingClass: string) => `Compare the risks, ${findingClass}`,
  history: {
    caption: 'History of this plan', columns: { version: 'Version', standing: 'Standing', drafted: 'Drafted by', why: 'Why', approved: 'Signed by', changes: 'Changes' },
    version: (version: string) => `Version ${version}`, drafted: (by: string, at: string) => `${by}, ${at}`, signed: (by: string, at: string) => `${by}, ${at}`, none: 'nobody yet', first: 'first version',
  },
  lots: {
    caption: (version: string) => `Lots not on version ${version}`, empty: 'Every open lot of this plan is on the version in force.', columns: { lot: 'Lot', product: 'Product', version: 'Version', where: 'Where it is', move: 'Move' },
    lead: 'A lot stays on the version it was opened with. Nothing else moves it: not a new version, not an approval. Moved here, by an engineer with a reason and a signature, its next gates follow the version in force; gates already worked stay as they were.',
    move: (lot: string, version: string) => `Move ${lot} to version ${version}`, heading: (lot: string, from: string, to: string) => `Move ${lot} from version ${from} to version ${to}`, meaning: 'Moved to this version by',
    statement: (lot: string, version: string) => `I move ${lot} on purpose to version ${version}. What was inspected so far keeps the plan it was inspected by.`, reason: 'Why it is moved', reasonMissing: 'Say why.', reasonHint: 'Stands on the lot’s traveller.', moved: (lot: string, version: string) => `${lot} is on version ${version} now.`, version: (version: string) => `version ${version}`, done: 'all gates worked',
  },
  exports: { pdf: 'This version as PDF', csv: 'This version as CSV' },
  tablesLink: 'Our tables and your own copies',
};
export type PlanVersionsWords = typeof planVersionsWords;
