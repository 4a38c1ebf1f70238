import { glyphRun } from '../type/typefaces.ts';
import type { LabelLayout, LabelMark } from './label-layout.ts';

/** The label as a stand-alone SVG in true millimetres. Letters are outlines: it looks the same where the typeface is missing. */
export function paintSvg({ widthMm, heightMm, described, marks }: LabelLayout): string {
  const paths: string[] = [];
  let bars = '';
  marks.forEach((mark, i) => {
    if (mark.kind === 'text') {
      paths.push(`<path fill="${mark.ink}" d="${outline(mark)}"/>`);
      return;
    }
    bars += `M${short(mark.x)} ${short(mark.y)}h${short(mark.widthMm)}v${short(mark.heightMm)}h${short(-mark.widthMm)}z`;
    const next = marks[i + 1];
    if (next !== undefined && next.kind === 'bar' && next.ink === mark.ink) return;
    paths.push(`<path fill="${mark.ink}" shape-rendering="crispEdges" d="${bars}"/>`);
    bars = '';
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" role="img" width="${widthMm}mm" height="${heightMm}mm" viewBox="0 0 ${widthMm} ${heightMm}">`
    + `<title>${escaped(described)}</title><desc>${escaped(marks.flatMap((m) => (m.kind === 'text' ? [m.text] : [])).join(' | '))}</desc>`
    + `<rect width="${widthMm}" height="${heightMm}" fill="white"/>${paths.join('')}</svg>`;
}

const letters = { moveTo: 'M', lineTo: 'L', quadraticCurveTo: 'Q', bezierCurveTo: 'C', closePath: 'z' } as const;

function outline({ face, text, sizeMm, x, y }: Extract<LabelMark, { kind: 'text' }>): string {
  const { run, unitsPerEm } = glyphRun(face, text);
  const scale = sizeMm / unitsPerEm;
  let pen = 0;
  let d = '';
  run.glyphs.forEach((glyph, i) => {
    const place = run.positions[i];
    const left = pen + (place?.xOffset ?? 0);
    const lift = place?.yOffset ?? 0;
    for (const { command, args } of glyph.path.commands) {
      d += letters[command] + args.map((arg, n) => short(n % 2 === 0 ? x + (left + arg) * scale : y - (lift + arg) * scale)).join(' ');
    }
    pen += place?.xAdvance ?? 0;
  });
  return d;
}

/** A tenth of a micrometre is finer than any printer. */
function short(mm: number): string {
  return String(Math.round(mm * 1e4) / 1e4);
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}
