import type { Command } from '../../shared/traveller/index.ts';
import { kioskEntryWords } from '../../shared/words/kiosk-entries.en.ts';
import { say } from '../../shared/words/words-for.ts';
import { mayWait } from '../link/kept-commands.ts';
import { locale } from './words.ts';

/** What an entry in the outbox says; the command's own name for one that never waits there. */
export function entrySentence(command: Command): string {
  if (!mayWait(command)) return command.type;
  const written = (value: number): string => new Intl.NumberFormat(locale(), { maximumSignificantDigits: 15 }).format(value);
  return say(kioskEntryWords, command.type, command, written);
}
