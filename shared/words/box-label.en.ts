/** What stands on a box label besides the box's own data. */
export const boxLabelWords = {
  quantity: 'QUANTITY',
  pieces: 'pcs',
  lot: 'LOT',
  box: 'BOX',
  packed: 'PACKED',
  certificate: 'CERTIFICATE',
  origin: 'ORIGIN',
  customerItem: 'YOUR ITEM',
  grade: 'Grade',
  uncoated: 'uncoated',
  none: '–',
  reprint: (count: number) => `REPRINT ${count}`,
  demo: 'INVENTED DEMO DATA',
  caution: 'SHARP · HEAVY',
  cautionRule: 'Follow your site’s rules and the safety data sheet.',
  described: (designation: string, box: string) => `Box label, ${designation}, box ${box}`,
};
export type BoxLabelWords = typeof boxLabelWords;
