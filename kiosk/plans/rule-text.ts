import type { Characteristic } from '../../shared/traveller/index.ts';
import { formatFor, type Format } from '../../shared/words/format.ts';
import { localeFor } from '../../shared/words/locale.ts';
import { writeLimits, writeRule } from '../../shared/words/write-rule.ts';

/** How the page's language writes figures. */
export function pageFormat(): Format {
  return formatFor(localeFor(document.documentElement.lang));
}
/** The sampling rule of a characteristic as a sentence. */
export function ruleText(characteristic: Characteristic): string {
  return writeRule(characteristic, pageFormat());
}
/** What a characteristic is judged against, line by line. */
export function limitLines(characteristic: Characteristic): readonly string[] {
  return writeLimits(characteristic, pageFormat());
}
