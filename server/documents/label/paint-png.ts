import { glyphRun } from '../type/typefaces.ts';
import { BilevelPage } from './bilevel-page.ts';
import type { LabelLayout } from './label-layout.ts';
import { bilevelPng } from './png-file.ts';

/** The label dot for dot as the chosen printer sets it: black or white, no grey to be guessed at. */
export function paintPng({ widthMm, heightMm, dotsPerMm, marks }: LabelLayout): Buffer {
  const dot = (mm: number): number => Math.round(mm * dotsPerMm);
  const page = new BilevelPage(dot(widthMm), dot(heightMm));
  for (const mark of marks) {
    const black = mark.ink === 'black';
    if (mark.kind === 'bar') {
      page.fillBar(dot(mark.x), dot(mark.y), dot(mark.x + mark.widthMm) - dot(mark.x), dot(mark.y + mark.heightMm) - dot(mark.y), black);
    } else {
      const { run, unitsPerEm } = glyphRun(mark.face, mark.text);
      page.fillGlyphs(run, mark.x * dotsPerMm, mark.y * dotsPerMm, (mark.sizeMm * dotsPerMm) / unitsPerEm, black);
    }
  }
  return bilevelPng(page.dots, page.width, page.height, dotsPerMm);
}
