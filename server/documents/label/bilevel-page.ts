import type { GlyphRun } from 'fontkit';

interface Edge {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** Lines looked at in each row of dots when a letter is filled. */
const linesPerRow = 4;

/** A page of black and white dots, as a thermal printer sees it; no system tool, no browser. Dots from the upper left corner. */
export class BilevelPage {
  /** One byte a dot, 1 is black. */
  readonly dots: Uint8Array;
  readonly width: number;
  readonly height: number;

  constructor(width: number, height: number) {
    this.width = width;
    this.height = height;
    this.dots = new Uint8Array(width * height);
  }

  /** Fills whole dots; the caller has put the corners on dots. */
  fillBar(x: number, y: number, width: number, height: number, black: boolean): void {
    const [left, right] = [Math.max(0, x), Math.min(this.width, x + width)];
    for (let row = Math.max(0, y); row < Math.min(this.height, y + height); row += 1) {
      this.dots.fill(black ? 1 : 0, row * this.width + left, row * this.width + right);
    }
  }

  /** Fills a line of glyphs whose baseline starts at x, y; `scale` is dots a font unit. A dot more than half covered is inked. */
  fillGlyphs(run: GlyphRun, x: number, y: number, scale: number, black: boolean): void {
    let pen = x;
    run.glyphs.forEach((glyph, i) => {
      const place = run.positions[i];
      const left = pen + (place?.xOffset ?? 0) * scale;
      const base = y - (place?.yOffset ?? 0) * scale;
      this.#fillEdges(edgesOf(glyph.path.commands, left, base, scale), black);
      pen += (place?.xAdvance ?? 0) * scale;
    });
  }

  #fillEdges(edges: readonly Edge[], black: boolean): void {
    const lines = crossingsByLine(edges, this.height * linesPerRow);
    const cover = new Float32Array(this.width);
    for (const [row, crossings] of rowsOf(lines)) {
      cover.fill(0);
      for (const line of crossings) coverLine(line, cover);
      for (let x = 0; x < this.width; x += 1) {
        if ((cover[x] ?? 0) > linesPerRow / 2) this.dots[row * this.width + x] = black ? 1 : 0;
      }
    }
  }
}

interface Crossing {
  readonly x: number;
  /** 1 where the outline goes down, -1 where it goes up. */
  readonly turn: number;
}

/** Where each thin line meets the outline; a line is looked at in its middle. */
function crossingsByLine(edges: readonly Edge[], lineCount: number): ReadonlyMap<number, Crossing[]> {
  const lines = new Map<number, Crossing[]>();
  for (const { x0, y0, x1, y1 } of edges) {
    const first = Math.max(0, Math.ceil(Math.min(y0, y1) * linesPerRow - 0.5));
    const past = Math.min(lineCount, Math.ceil(Math.max(y0, y1) * linesPerRow - 0.5));
    for (let line = first; line < past; line += 1) {
      const crossing = { x: x0 + (((line + 0.5) / linesPerRow - y0) / (y1 - y0)) * (x1 - x0), turn: y1 > y0 ? 1 : -1 };
      const known = lines.get(line);
      if (known === undefined) lines.set(line, [crossing]);
      else known.push(crossing);
    }
  }
  return lines;
}

function rowsOf(lines: ReadonlyMap<number, Crossing[]>): ReadonlyMap<number, Crossing[][]> {
  const rows = new Map<number, Crossing[][]>();
  for (const [line, crossings] of lines) {
    const row = Math.floor(line / linesPerRow);
    rows.set(row, [...(rows.get(row) ?? []), crossings]);
  }
  return rows;
}

/** Adds to each dot the share of one thin line that lies inside the outline (non-zero winding). */
function coverLine(crossings: Crossing[], cover: Float32Array): void {
  let winding = 0;
  let from = 0;
  for (const { x, turn } of crossings.sort((a, b) => a.x - b.x)) {
    if (winding === 0) from = x;
    winding += turn;
    if (winding === 0) coverSpan(from, x, cover);
  }
}

function coverSpan(from: number, to: number, cover: Float32Array): void {
  const last = Math.min(cover.length - 1, Math.floor(to));
  for (let x = Math.max(0, Math.floor(from)); x <= last; x += 1) {
    cover[x] = (cover[x] ?? 0) + Math.max(0, Math.min(to, x + 1) - Math.max(from, x));
  }
}

function edgesOf(commands: GlyphRun['glyphs'][number]['path']['commands'], left: number, base: number, scale: number): readonly Edge[] {
  const edges: Edge[] = [];
  let [startX, startY, x, y] = [0, 0, 0, 0];
  const lineTo = (nextX: number, nextY: number): void => {
    edges.push({ x0: x, y0: y, x1: nextX, y1: nextY });
    [x, y] = [nextX, nextY];
  };
  for (const { command, args } of commands) {
    const points = args.map((arg, i) => (i % 2 === 0 ? left + arg * scale : base - arg * scale));
    const [ax = 0, ay = 0, bx = 0, by = 0, cx = 0, cy = 0] = points;
    if (command === 'moveTo') [startX, startY, x, y] = [ax, ay, ax, ay];
    else if (command === 'lineTo') lineTo(ax, ay);
    else if (command === 'closePath') lineTo(startX, startY);
    else {
      // A quadratic curve is the cubic with both handles two thirds of the way to its one.
      const [fromX, fromY] = [x, y];
      const cubic = command === 'bezierCurveTo'
        ? [ax, ay, bx, by, cx, cy] as const
        : [fromX + (2 / 3) * (ax - fromX), fromY + (2 / 3) * (ay - fromY), bx + (2 / 3) * (ax - bx), by + (2 / 3) * (ay - by), bx, by] as const;
      for (let step = 1; step <= 8; step += 1) {
        const t = step / 8;
        lineTo(bezier(t, fromX, cubic[0], cubic[2], cubic[4]), bezier(t, fromY, cubic[1], cubic[3], cubic[5]));
      }
    }
  }
  return edges;
}

function bezier(t: number, a: number, b: number, c: number, d: number): number {
  const s = 1 - t;
  return s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
}
