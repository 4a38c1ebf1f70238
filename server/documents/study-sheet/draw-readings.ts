import type { Study } from '../../../shared/traveller/index.ts';
import { studyWords as words } from '../../../shared/words/study-sheet.en.ts';
import { ink, mm } from '../sheet/ink.ts';
import type { Sheet, TextStyle } from '../sheet/sheet.ts';

const small: TextStyle = { face: 'text', size: 7.5, ink: 'soft' };
/** A shape for each person, so that grey paper tells them apart. */
const SHAPES = ['circle', 'square', 'triangle', 'diamond'] as const;

/** Every reading over its part, a column and a shape for each person. */
export function drawReadings(sheet: Sheet, study: Study): void {
  const values = study.readings.map(({ value }) => value);
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const height = 52 * mm;
  const decimals = decimalsOf(study.gaugeThen.resolution);
  sheet.heading(words.plot.title, height + 12 * mm);
  sheet.tag('P', () => sheet.line(words.plot.y(study.characteristic, study.gaugeThen.unit), sheet.left, sheet.y + 7, small));
  const [left, top, width] = [sheet.left + 16 * mm, sheet.y + 4 * mm, sheet.width - 18 * mm];
  const yOf = (value: number): number => top + height - 4 - ((value - least) / (most - least || 1)) * (height - 8);
  const slot = width / study.parts.length;
  const alternative = `${words.plot.title}: ${words.plot.x}; ${words.plot.y(study.characteristic, study.gaugeThen.unit)}`;
  sheet.tag('Figure', () => {
    const { doc } = sheet;
    doc.lineWidth(0.6).strokeColor(ink.rule).rect(left, top, width, height).stroke();
    for (const [at, label] of [least, most].entries()) sheet.line(label.toFixed(decimals), sheet.left, at === 0 ? top + height - 2 : top + 6, small);
    study.parts.forEach(({ label }, at) => {
      if (at > 0) doc.moveTo(left + at * slot, top).lineTo(left + at * slot, top + height).strokeColor(ink.hair).stroke();
      sheet.line(label, left + at * slot + 3, top + height + 9, small);
    });
    for (const { part, badge, value } of study.readings) {
      const person = Math.max(0, study.people.findIndex((each) => each.badge === badge));
      drawShape(sheet, SHAPES[person % SHAPES.length] ?? 'circle', left + (part - 1 + (person + 1) / (study.people.length + 1)) * slot, yOf(value));
    }
  }, sheet.root, { alt: alternative, bbox: [sheet.left, top, left + width, top + height], placement: 'Block' });
  sheet.adorn(() => sheet.line(words.plot.x, sheet.left, top + height + 9, small));
  sheet.y = top + height + 12;
  study.people.forEach(({ name }, at) => {
    const x = left + at * 45 * mm;
    sheet.adorn(() => drawShape(sheet, SHAPES[at % SHAPES.length] ?? 'circle', x, sheet.y + 5));
    sheet.tag('P', () => sheet.line(name, x + 6, sheet.y + 8, small));
  });
  sheet.y += 14;
}

/** Decimals of a resolution: 0.001 has three. */
function decimalsOf(resolution: number): number {
  return Math.max(0, Math.min(9, Math.ceil(-Math.log10(resolution) - 1e-9)));
}

function drawShape({ doc }: Sheet, shape: (typeof SHAPES)[number], x: number, y: number): void {
  const size = 2.2;
  doc.lineWidth(0.8);
  switch (shape) {
    case 'circle': doc.circle(x, y, size); break;
    case 'square': doc.rect(x - size, y - size, 2 * size, 2 * size); break;
    case 'triangle': doc.polygon([x - size, y + size], [x + size, y + size], [x, y - size]); break;
    case 'diamond': doc.polygon([x - size, y], [x, y - size], [x + size, y], [x, y + size]); break;
  }
  doc.strokeColor(ink.ink).stroke();
}
