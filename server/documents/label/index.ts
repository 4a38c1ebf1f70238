import type { BoxLabelData, LabelChoice } from './label-data.ts';
import { layOutLabel } from './label-layout.ts';
import { paintPdf } from './paint-pdf.ts';
import { paintPng } from './paint-png.ts';
import { paintSvg } from './paint-svg.ts';

export { dotsPerMm, labelSizes, type BoxLabelData, type LabelChoice, type LabelSize, type PrinterDpi } from './label-data.ts';

/** One box label as a PDF page of the label's own size. Whether the box may be labelled at all is asked before: see the traveller. */
export function boxLabelPdf(data: BoxLabelData, choice: LabelChoice = {}): Promise<Buffer> {
  return labelSheetPdf([data], choice);
}

/** Many box labels in one PDF, a page each, for a roll printer. */
export function labelSheetPdf(many: readonly BoxLabelData[], choice: LabelChoice = {}): Promise<Buffer> {
  const title = many.length === 1 ? `Box ${many[0]?.boxSerial ?? ''}` : `${many.length} box labels`;
  return paintPdf(laidOut(many, choice), { title, language: 'en' });
}

/** One box label as SVG text, for the screen. */
export function boxLabelSvg(data: BoxLabelData, choice: LabelChoice = {}): string {
  return paintSvg(layOutLabel(data, choice));
}

/** One box label as a black-and-white PNG, dot for dot as the printer of the chosen resolution sets it. */
export function boxLabelPng(data: BoxLabelData, choice: LabelChoice = {}): Buffer {
  return paintPng(layOutLabel(data, choice));
}

/** The text the label's two-dimensional code holds. */
export function boxLabelCode(data: BoxLabelData): string {
  return layOutLabel(data).code;
}

function* laidOut(many: readonly BoxLabelData[], choice: LabelChoice) {
  for (const data of many) yield layOutLabel(data, choice);
}
