/** Every state that has a drawn mark. A word always stands beside the mark. */
export type StateName =
  | 'accepted' | 'rejected' | 'hold' | 'waiting' | 'open' | 'next-sample'
  | 'normal' | 'tightened' | 'reduced' | 'discontinued'
  | 'concession' | 'released' | 'signed' | 'scrapped' | 'recalled'
  | 'offline' | 'online' | 'kept' | 'refused' | 'corrected'
  | 'overdue' | 'due' | 'caution' | 'locked';

/** The palette family a state takes its colour from. */
export type Tone = 'good' | 'bad' | 'held' | 'link' | 'calm';

/** The tone of each state; the shape and the word say which state within a tone. */
export const toneOf: Readonly<Record<StateName, Tone>> = {
  accepted: 'good', released: 'good', signed: 'good',
  rejected: 'bad', refused: 'bad', scrapped: 'bad', recalled: 'bad', discontinued: 'bad', overdue: 'bad',
  hold: 'held', tightened: 'held', concession: 'held', kept: 'held', due: 'held', caution: 'held',
  open: 'link', 'next-sample': 'link',
  waiting: 'calm', normal: 'calm', reduced: 'calm', offline: 'calm', online: 'calm', corrected: 'calm', locked: 'calm',
};
