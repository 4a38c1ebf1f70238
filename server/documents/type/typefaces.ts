import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { create, type Font, type GlyphRun } from 'fontkit';

/** The cuts our papers are set in: Fira Sans for reading, its condensed sister where a long number must stay large. */
export type Face = 'text' | 'textStrong' | 'narrow' | 'narrowMedium' | 'narrowStrong';

const files: Readonly<Record<Face, string>> = {
  text: '@expo-google-fonts/fira-sans/400Regular/FiraSans_400Regular.ttf',
  textStrong: '@expo-google-fonts/fira-sans/600SemiBold/FiraSans_600SemiBold.ttf',
  narrow: '@expo-google-fonts/fira-sans-condensed/400Regular/FiraSansCondensed_400Regular.ttf',
  narrowMedium: '@expo-google-fonts/fira-sans-condensed/500Medium/FiraSansCondensed_500Medium.ttf',
  narrowStrong: '@expo-google-fonts/fira-sans-condensed/700Bold/FiraSansCondensed_700Bold.ttf',
};

const opened = new Map<Face, Font>();
const { resolve } = createRequire(import.meta.url);

/** An opened typeface, shared by all documents: shaping a word costs a hundred times more than looking it up. */
export function openedFace(name: Face): Font {
  const known = opened.get(name);
  if (known !== undefined) return known;
  const fresh = rememberingFont(create(readFileSync(resolve(files[name]))));
  opened.set(name, fresh);
  return fresh;
}

/** The same font, remembering what it has shaped. A plant prints for years and box numbers never come back, so it forgets now and then. */
function rememberingFont(font: Font): Font {
  if (font.unitsPerEm !== 1000) throw new Error(`${font.postscriptName}: runs can only be shared where a font unit is a thousandth of an em`);
  const runs = new Map<string, GlyphRun>();
  const layout = (text: string, features?: readonly string[]): GlyphRun => {
    const name = features === undefined ? text : `${text}\u0000${features.join()}`;
    const known = runs.get(name);
    if (known !== undefined) return known;
    const run = font.layout(text, features);
    if (runs.size >= 5000) runs.clear();
    runs.set(name, run);
    return run;
  };
  return Object.create(font, { layout: { value: layout } });
}

/** Height of a capital letter over the type size, a fraction 0 … 1. */
export function capHeight(name: Face): number {
  const font = openedFace(name);
  return font.capHeight / font.unitsPerEm;
}

/** Can every character of the text be drawn? Line breaks and tabs cannot. */
export function canDraw(name: Face, text: string): boolean {
  return [...text].every((character) => openedFace(name).hasGlyphForCodePoint(character.codePointAt(0) ?? 0));
}

/** The glyphs of one line of text and their places, in font units. */
export function glyphRun(name: Face, text: string): { readonly run: GlyphRun; readonly unitsPerEm: number } {
  const font = openedFace(name);
  return { run: font.layout(text), unitsPerEm: font.unitsPerEm };
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
