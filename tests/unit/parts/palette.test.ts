import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

/*
 * Contrast as WCAG 2.2 defines it: relative luminance and contrast ratio (glossary of the Recommendation; formula from memory).
 * 7:1 is success criterion 1.4.6 (AAA), 3:1 is 1.4.11 for what can be touched.
 */
const themes = ['light', 'dark', 'contrast'] as const;

function paletteOf(theme: string): ReadonlyMap<string, string> {
  const text = readFileSync(new URL(`../../../kiosk/theme/${theme}.css`, import.meta.url), 'utf8');
  return new Map([...text.matchAll(/--([a-z-]+):\s*(#[0-9a-f]{6});/g)].map(([, name = '', colour = '']) => [name, colour]));
}

function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
  const [bright = 0, dim = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (bright + 0.05) / (dim + 0.05);
}

const tones = ['good', 'bad', 'held', 'link', 'calm'];
const grounds = ['slip', 'slip-under', 'tray'];

it('measures black on white as 21:1 and #777777 on white as 4.48:1 (published examples, from memory)', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
  expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2);
});

describe.each(themes)('the %s palette', (theme) => {
  const palette = paletteOf(theme);
  const colour = (name: string): string => {
    const found = palette.get(name);
    if (found === undefined) throw new Error(`${theme}.css has no --${name}`);
    return found;
  };
  it.each(['ink', 'ink-soft', ...tones].flatMap((text) => grounds.map((ground) => [text, ground] as const)))('writes %s on %s at 7:1 or better', (text, ground) => {
    expect(contrast(colour(text), colour(ground))).toBeGreaterThanOrEqual(7);
  });
  it.each(tones)('writes on a filled %s ground at 7:1 or better', (tone) => {
    expect(contrast(colour(`on-${tone}`), colour(`${tone}-ground`))).toBeGreaterThanOrEqual(7);
  });
  it.each(['line-strong', 'focus'].flatMap((line) => grounds.map((ground) => [line, ground] as const)))('draws %s on %s at 3:1 or better', (line, ground) => {
    expect(contrast(colour(line), colour(ground))).toBeGreaterThanOrEqual(3);
  });
});
