import { GhKeypad } from '../../parts/gh-keypad.ts';

/** The figure a keypad has told of; its window is emptied for the next one. */
export function enteredFigure(event: CustomEvent<{ readonly plain: string }>): number {
  if (event.currentTarget instanceof GhKeypad) event.currentTarget.value = '';
  return Number(event.detail.plain);
}
