import { TypedRun } from '../../parts/typed-run.ts';

const run = new TypedRun();

/**
 * Keeps a gauge that types from answering a question: figures typed in quick succession, and the Enter behind them, are swallowed while
 * a question stands. A person's own Enter is let through. For `keydown`, in the capture phase.
 */
export const swallowStrayTyping = {
  capture: true,
  handleEvent(event: KeyboardEvent): void {
    if (event.key === 'Enter' && run.isFresh(event.timeStamp)) {
      event.preventDefault();
      event.stopPropagation();
    }
    if (event.key.length === 1) run.hear(event.timeStamp, '');
  },
};
