import type { PressCard } from '../shared/traveller/index.ts';

/** The invented plant's presses; each with the balance that weighs what it makes. */
export const PRESSES: readonly PressCard[] = [{ id: 'PRESS-2', name: 'Press 2', bench: 'Press 2', balance: 'BAL-21' }];
