const pieces = (count: number, written: string): string => (count === 1 ? '1 piece' : `${written} pieces`);

/** What the lab desk says. */
export const kioskLabWords = {
  title: 'Lab',
  waiting: 'Tests to be done', held: 'On hold', batches: 'Powder batches', charges: 'Charges', due: 'Falls due',
  loading: 'Reading what waits in the lab', tryAgain: 'Try again',
  emptyWaiting: 'No test waits at this bench. Batches and charges of every bench stand below.',
  none: 'None yet.',
  openBatch: 'Open a powder batch', openFurnace: 'Open a furnace charge', openCoating: 'Open a coating charge',
  number: 'Number', numberHint: '2 to 16 of A–Z, 0–9 and dash', missing: 'This must be filled in.', whole: 'A whole number, 1 or more.', positive: 'A number above 0.', cancel: 'Leave it', busy: 'Under way',
  batch: { grade: 'Grade', barrels: 'Barrels', kg: 'kg in each barrel', raw: 'Raw-material lots it was made of', rawLot: 'Raw lot', material: 'Material', rawKg: 'kg', addRaw: 'One more raw lot', dropRaw: (lot: string) => `Take out raw lot ${lot}`, open: 'Open the batch', rawMissing: 'Name at least one raw-material lot.' },
  charge: { furnaceOf: 'Grade', coatingOf: 'Coating', programme: 'Programme', furnace: 'Furnace', coater: 'Coating plant', lots: 'Lots that are ready', noLots: 'No lot is ready for such a charge.', ready: (designation: string, count: number, written: string) => `${designation}, ${pieces(count, written)}`, places: (lot: string) => `Places of ${lot}`, placesHint: 'For example: Level 1, Level 2', chosen: (count: number) => (count === 1 ? '1 lot chosen' : `${count} lots chosen`), open: 'Open the charge', noneChosen: 'Choose at least one lot.' },
  released: (shrinkage: string) => `Released, shrinkage ${shrinkage}`,
};
export type KioskLabWords = typeof kioskLabWords;
