import { readBoxCode } from '../../shared/traveller/box-code/index.ts';
import type { BoxCodeFault } from '../../shared/traveller/box-code/index.ts';
import { boxCodeFaultWords } from '../../shared/words/packing-desk.en.ts';
import { say } from '../../shared/words/words-for.ts';

/** What came from a scanner or was typed: a box's own code, one that is damaged, or some other text. */
export type ScannedCode =
  | { readonly what: 'box'; readonly lot: string; readonly serial: string | null; readonly payload: string }
  | { readonly what: 'fault'; readonly happened: string; readonly next: string }
  | { readonly what: 'text'; readonly text: string };

/** Reads a scan. Line ends that a scanner adds behind the code are taken off; nothing else is mended. */
export function readScanned(scan: string): ScannedCode {
  const text = scan.replace(/[\r\n\t]+$/, '');
  if (!isMeantAsCode(text)) return { what: 'text', text: text.trim() };
  const read = readBoxCode(text);
  if (!read.ok) return { what: 'fault', ...faultWords(read.why) };
  return { what: 'box', lot: read.fields.lot, serial: read.fields.serial ?? null, payload: text };
}

/** The words of a damaged code. */
export function faultWords(why: BoxCodeFault): { readonly happened: string; readonly next: string } {
  return say<BoxCodeFault, 'code', { readonly happened: string; readonly next: string }, [], BoxCodeFault['code']>(boxCodeFaultWords, why.code, why);
}

// A code that lost its control characters on the way begins `[)>06` or `06`, and then an identifier.
function isMeantAsCode(text: string): boolean {
  return text.startsWith('[)>') || /^06\d{0,3}[A-Za-z]/.test(text) || [...text].some((character) => character < ' ');
}
