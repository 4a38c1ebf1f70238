/** What a hold tag says besides its data. */
export const holdTagWords = {
  title: (number: string) => `Hold tag ${number}`,
  word: 'HOLD',
  rule: 'Do not move, mix, pack or ship.',
  reason: 'Why',
  quantity: 'Quantity',
  pieces: (count: number) => (count === 1 ? '1 piece' : `${count} pieces`),
  gate: 'Gate',
  by: 'Held by',
  at: 'At',
  kinds: { insertLot: 'Lot', powderBatch: 'Powder batch', furnaceCharge: 'Furnace charge', coatingCharge: 'Coating charge', rawLot: 'Raw-material lot' },
  lift: 'Only a signed disposition lifts this hold. The tag comes off when the traveller says so.',
  demo: 'INVENTED DEMO DATA',
  codeHolds: (number: string) => `Square code with the number ${number}`,
};
export type HoldTagWords = typeof holdTagWords;
