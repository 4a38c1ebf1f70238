import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { create, type Font, type GlyphRun } from 'fontkit';

/** The cuts our papers are set in: Fira Sans for reading, its condensed sister where a long number must stay large. */
export type Face = 'text' | 'textStrong' | 'narrow' | 'narrowStrong';

const files: Readonly<Record<Face, string>> = {
  text: '@expo-google-fonts/fira-sans/400Regular/FiraSans_400Regular.ttf',
  textStrong: '@expo-google-fonts/fira-sans/600SemiBold/FiraSans_600SemiBold.ttf',
  narrow: '@expo-google-fonts/fira-sans-condensed/500Medium/FiraSansCondensed_500Medium.ttf',
  narrowStrong: '@expo-google-fonts/fira-sans-condensed/700Bold/FiraSansCondensed_700Bold.ttf',
};

interface LoadedFace {
  readonly bytes: Buffer;
  readonly font: Font;
  readonly runs: Map<string, GlyphRun>;
}

const loaded = new Map<Face, LoadedFace>();
const { resolve } = createRequire(import.meta.url);

function face(name: Face): LoadedFace {
  const known = loaded.get(name);
  if (known !== undefined) return known;
  const bytes = readFileSync(resolve(files[name]));
  const fresh = { bytes, font: create(bytes), runs: new Map<string, GlyphRun>() };
  loaded.set(name, fresh);
  return fresh;
}

/** The font file, as it is embedded. */
export function faceBytes(name: Face): Buffer {
  return face(name).bytes;
}

/** Height of a capital letter over the type size, a fraction 0 … 1. */
export function capHeight(name: Face): number {
  const { font } = face(name);
  return font.capHeight / font.unitsPerEm;
}

/** Can every character of the text be drawn? Line breaks and tabs cannot. */
export function canDraw(name: Face, text: string): boolean {
  return [...text].every((character) => face(name).font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0));
}

/** The glyphs of one line of text and their places, in ems; what is asked often is kept. */
export function glyphRun(name: Face, text: string): { readonly run: GlyphRun; readonly unitsPerEm: number } {
  const { font, runs } = face(name);
  const known = runs.get(text);
  if (known !== undefined) return { run: known, unitsPerEm: font.unitsPerEm };
  const run = font.layout(text);
  if (runs.size >= 4000) runs.clear(); // a plant prints for years; box numbers never come back
  runs.set(text, run);
  return { run, unitsPerEm: font.unitsPerEm };
}

/** Width of one line of text, in the unit of `size`. */
export function textWidth(name: Face, text: string, size: number): number {
  const { run, unitsPerEm } = glyphRun(name, text);
  return (run.advanceWidth / unitsPerEm) * size;
}

/** The largest type size, at most `most`, at which the text is no wider than `width`. */
export function sizeToFit(name: Face, text: string, width: number, most: number): number {
  const wide = textWidth(name, text, most);
  return wide <= width ? most : (most * width) / wide;
}
