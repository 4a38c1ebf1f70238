/** What a printed traveller says besides its slips. */
export const travellerSheetWords = {
  title: (number: string) => `Traveller ${number}`,
  heading: 'Traveller',
  at: 'At',
  by: 'By',
  bench: 'Bench',
  slip: 'What happened',
  slips: (count: number) => (count === 1 ? '1 slip' : `${count} slips`),
  printed: (at: string) => `Printed ${at}. Later slips are not on this paper.`,
  none: 'No slip hangs on this traveller yet.',
  demo: 'INVENTED DEMO DATA',
  page: (page: number, of: number) => `Page ${page} of ${of}`,
};
export type TravellerSheetWords = typeof travellerSheetWords;
