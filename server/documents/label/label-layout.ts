import { buildBoxCode } from '../../../shared/traveller/box-code/index.ts';
import { requireWhole } from '../../../shared/ground/outside-domain.ts';
import { boxLabelWords, type BoxLabelWords } from '../../../shared/words/box-label.en.ts';
import { dataMatrix } from '../codes/data-matrix.ts';
import { capHeight, sizeToFit, textWidth, type Face } from '../type/typefaces.ts';
import { dotsPerMm, labelSizes, type BoxLabelData, type LabelChoice } from './label-data.ts';
import { placeCode } from './place-code.ts';

/** One thing to draw, in millimetres from the upper left corner. A text stands on its baseline `y` and starts at `x`. */
export type LabelMark =
  | { readonly kind: 'text'; readonly x: number; readonly y: number; readonly sizeMm: number; readonly face: Face; readonly text: string; readonly ink: Ink }
  | { readonly kind: 'bar'; readonly x: number; readonly y: number; readonly widthMm: number; readonly heightMm: number; readonly ink: Ink };
/** A thermal printer knows no grey. */
export type Ink = 'black' | 'white';

interface LabelField {
  readonly caption: string;
  readonly value: string;
  /** Its part of the width, against the others of its row. */
  readonly share: number;
}

export interface LabelLayout {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly dotsPerMm: number;
  readonly described: string;
  /** The text in the two-dimensional code. */
  readonly code: string;
  readonly marks: readonly LabelMark[];
}

/**
 * Places everything on one label, once for all ways of drawing it. People first: designation, material, quantity, lot, box; then the code,
 * its modules whole printer dots.
 * @throws OutsideDomain when the data cannot stand in a box code
 */
export function layOutLabel(data: BoxLabelData, choice: LabelChoice = {}): LabelLayout {
  requireWhole('data.reprint', data.reprint, 0, 9999);
  const { widthMm, heightMm } = labelSizes[choice.size ?? '100x50'];
  const words = choice.words ?? boxLabelWords;
  const perMm = dotsPerMm[choice.dpi ?? 203];
  const onDot = (mm: number): number => Math.round(mm * perMm) / perMm;
  const unit = widthMm / 100; // type and margins shrink with the width; the height decides how much air stands between the rows
  const isTall = heightMm > 0.6 * widthMm;
  const margin = 3 * unit;
  const codeMm = 23 * unit;
  const code = buildBoxCode({
    item: data.item, lot: data.lot, serial: data.boxSerial, quantity: data.quantity, packedOn: data.packedOn,
    ...(data.country === undefined ? {} : { country: data.country }),
  });
  const marks: LabelMark[] = [];
  const rule = (x: number, y: number, width: number, thick: number): void => {
    marks.push({ kind: 'bar', x: onDot(x), y: onDot(y), widthMm: onDot(width), heightMm: Math.max(2 / perMm, onDot(thick)), ink: 'black' });
  };
  const write = (face: Face, text: string, x: number, y: number, width: number, most: number, ink: Ink = 'black'): void => {
    marks.push({ kind: 'text', x, y, sizeMm: sizeToFit(face, text, width, most), face, text, ink });
  };

  const innerMm = widthMm - 2 * margin;
  const textMm = innerMm - codeMm - 2 * unit;
  const right = widthMm - margin;

  // Head: whose box it is; at the right what a reader must not miss.
  let flagX = right;
  for (const flag of flagsOf(data, words)) {
    const size = 3.2 * unit;
    const wide = textWidth('narrowStrong', flag, size) + 2.4 * unit;
    flagX -= wide;
    marks.push({ kind: 'bar', x: onDot(flagX), y: onDot(2 * unit), widthMm: onDot(wide), heightMm: onDot(4.4 * unit), ink: 'black' });
    write('narrowStrong', flag, flagX + 1.2 * unit, 2 * unit + 2.2 * unit + (size * capHeight('narrowStrong')) / 2, wide, size, 'white');
    flagX -= 1.2 * unit;
  }
  write('textStrong', data.plant, margin, 5.4 * unit, flagX - margin - unit, 3.2 * unit);
  rule(margin, 7.4 * unit, innerMm, 0.25);

  const top = 7.4 * unit;
  const bottom = heightMm - 7 * unit;
  const at = (fraction: number): number => top + (bottom - top) * fraction;
  write('narrowStrong', data.designation, margin, at(isTall ? 0.225 : 0.29), textMm, 13 * unit);
  write('narrowMedium', `${words.grade} ${data.grade} · ${data.coating ?? words.uncoated}`, margin, at(isTall ? 0.345 : 0.445), textMm, (isTall ? 5.6 : 4.6) * unit);
  rule(margin, at(isTall ? 0.395 : 0.495), textMm, 0.25);

  const gap = 2.5 * unit;
  // One row of captioned values, all in one size: the largest at which each fits its share of the width.
  const fields = (entries: readonly LabelField[], fraction: number, most: number): void => {
    const free = textMm - gap * (entries.length - 1);
    const shares = entries.reduce((sum, { share }) => sum + share, 0);
    const size = Math.min(...entries.map(({ value, share }) => sizeToFit('narrowStrong', value, (free * share) / shares, most)));
    let x = margin;
    for (const { caption, value, share } of entries) {
      const width = (free * share) / shares;
      write('narrowMedium', caption, x, at(fraction) - size * capHeight('narrowStrong') - 0.9 * unit, width, 2.2 * unit);
      write('narrowStrong', value, x, at(fraction), width, size);
      x += width + gap;
    }
  };
  const quantity = { caption: words.quantity, value: `${data.quantity} ${words.pieces}`, share: 24 };
  const lot = { caption: words.lot, value: data.lot, share: 32 };
  const box = { caption: words.box, value: data.boxSerial, share: 40 };
  const packed = { caption: words.packed, value: data.packedOn, share: 26 };
  const certificate = { caption: words.certificate, value: data.certificateNumber ?? words.none, share: 30 };
  const origin = data.country === undefined ? [] : [{ caption: words.origin, value: data.country, share: 12 }];
  const customerItem = data.customerItem === undefined ? [] : [{ caption: words.customerItem, value: data.customerItem, share: 28 }];
  if (isTall) {
    fields([quantity, { ...lot, share: 44 }], 0.615, 8.5 * unit);
    fields([{ ...box, share: 52 }, { ...certificate, share: 44 }], 0.8, 6 * unit);
    fields([packed, ...origin, ...customerItem], 0.965, 5 * unit);
  } else {
    fields([quantity, lot, box], 0.745, 5 * unit);
    fields([packed, certificate, ...origin, ...customerItem], 0.97, 4 * unit);
  }

  marks.push(...placeCode(dataMatrix(code), { right, top: top + 1.2 * unit, bottom: bottom - 0.8 * unit, mostMm: codeMm, dotsPerMm: perMm }));

  // Foot: the caution, white on black; the rules are the site's, not ours.
  const footY = heightMm - 6 * unit;
  marks.push({ kind: 'bar', x: 0, y: onDot(footY), widthMm, heightMm: heightMm - onDot(footY), ink: 'black' });
  const footBaseline = footY + 3 * unit + (3.6 * unit * capHeight('narrowStrong')) / 2;
  write('narrowStrong', words.caution, margin, footBaseline, innerMm * 0.4, 3.6 * unit, 'white');
  const used = textWidth('narrowStrong', words.caution, 3.6 * unit) + 3 * unit;
  write('narrowMedium', words.cautionRule, margin + used, footBaseline, innerMm - used, 3 * unit, 'white');

  return { widthMm, heightMm, dotsPerMm: perMm, described: words.described(data.designation, data.boxSerial), code, marks };
}

function flagsOf(data: BoxLabelData, words: BoxLabelWords): readonly string[] {
  return [...(data.reprint > 0 ? [words.reprint(data.reprint)] : []), ...(data.demo ? [words.demo] : [])];
}
