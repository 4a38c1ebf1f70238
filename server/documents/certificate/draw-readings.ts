import type { CertificateMeasured } from '../../../shared/wire/certificate-data.ts';
import { ink } from '../sheet/ink.ts';
import type { Sheet } from '../sheet/sheet.ts';

/** A picture of readings, 12 points high: the limits as posts, the span from least to greatest as a beam, the mean as a notch. */
export function drawReadings({ doc }: Sheet, span: Pick<CertificateMeasured, 'min' | 'mean' | 'max' | 'lower' | 'upper'>, x: number, y: number, width: number): void {
  const marks = [span.min, span.max, ...(span.lower === null ? [] : [span.lower]), ...(span.upper === null ? [] : [span.upper])];
  const [least, most] = [Math.min(...marks), Math.max(...marks)];
  const reach = most - least || 1;
  const at = (value: number): number => x + width * (0.08 + (0.84 * (value - least)) / reach);
  const middle = y + 6.2;
  doc.rect(x, middle - 0.2, width, 0.4).fill(ink.rule);
  for (const limit of [span.lower, span.upper]) if (limit !== null) doc.rect(at(limit) - 0.5, middle - 4.2, 1, 8.4).fill(ink.ink);
  doc.rect(at(span.min), middle - 1.6, Math.max(0.8, at(span.max) - at(span.min)), 3.2).fill(ink.soft);
  doc.rect(at(span.mean) - 0.9, middle - 2.8, 1.8, 5.6).fill(ink.ink);
}
