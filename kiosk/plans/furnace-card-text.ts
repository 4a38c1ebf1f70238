import { cellName, cellsOf } from '../../shared/traveller/index.ts';
import type { ChargeMap, EquipmentCard, MapLevel, ProgrammeCard, ProgrammeSegment, TestPosition } from '../../shared/traveller/index.ts';
import { readNumber, typedFigure } from '../desk/show.ts';

/** Maps and programmes as an engineer types them, a line each; what cannot be read is named by its line. */
export type Lines<Item> = { readonly items: readonly Item[] } | { readonly wrong: string };

function linesOf<Item>(text: string, read: (line: string) => Item | null): Lines<Item> {
  const items: Item[] = [];
  for (const line of text.split('\n').map((each) => each.trim()).filter((each) => each !== '')) {
    const item = read(line);
    if (item === null) return { wrong: line };
    items.push(item);
  }
  return { items };
}

const whole = (text: string): number | null => (/^\d{1,3}$/.test(text) && Number(text) >= 1 ? Number(text) : null);

/** Levels from the top down, one a line: `Top: 2 x 3` (rows by columns) or `Level 1: ring 8`. */
export function readLevels(text: string): Lines<MapLevel> {
  return linesOf(text, (line): MapLevel | null => {
    const [, name = '', rows = '', columns = '', ring = ''] = /^(.+?)\s*:\s*(?:(\d+)\s*[x×]\s*(\d+)|ring(?: of)?\s+(\d+))$/i.exec(line) ?? [];
    const positions = whole(ring);
    if (name !== '' && positions !== null) return { name, layout: { by: 'ring', positions } };
    const [down, across] = [whole(rows), whole(columns)];
    return name === '' || down === null || across === null ? null : { name, layout: { by: 'grid', rows: down, columns: across } };
  });
}
export function writeLevels(levels: readonly MapLevel[]): string {
  return levels.map(({ name, layout }) => `${name}: ${layout.by === 'grid' ? `${layout.rows} x ${layout.columns}` : `ring ${layout.positions}`}`).join('\n');
}

/** Test positions, one a line: the name that plans ask for, and its cell: `Door: Top 3`. */
export function readTestPositions(text: string, levels: readonly MapLevel[]): Lines<TestPosition> {
  const map: Pick<ChargeMap, 'levels'> = { levels };
  return linesOf(text, (line): TestPosition | null => {
    const [, name = '', cell = ''] = /^(.+?)\s*:\s*(.+)$/.exec(line) ?? [];
    const at = cellsOf(map).find((each) => cellName(map, each) === cell);
    return name === '' || at === undefined ? null : { name, level: at.level, position: at.position };
  });
}
export function writeTestPositions({ levels, testPositions }: ChargeMap): string {
  return testPositions.map((position) => `${position.name}: ${cellName({ levels }, position)}`).join('\n');
}

/**
 * Segments in their order, one a line, parts between semicolons: `heat; Heating; 1402; most 8` (°C, °C/min), `soak; Sintering; 1402 to 1418; least 57;
 * most 66` (°C, min), and behind a soak `pressure 57000 to 63000 for 30` (mbar, min).
 */
export function readSegments(text: string): Lines<ProgrammeSegment> {
  return linesOf(text, readSegment);
}

function readSegment(line: string): ProgrammeSegment | null {
  const [kind = '', name = '', what = '', ...more] = line.split(';').map((part) => part.trim());
  const parts = more.map((part) => /^(least|most|pressure)\s+(.+)$/i.exec(part));
  if (name === '' || parts.some((part) => part === null)) return null;
  const part = (word: string): string | null => parts.find((each) => each?.[1]?.toLowerCase() === word)?.[2] ?? null;
  const [least, most] = [limit(part('least')), limit(part('most'))];
  if (least === undefined || most === undefined || new Set(parts.map((each) => each?.[1]?.toLowerCase())).size !== parts.length) return null;
  if (kind === 'heat' || kind === 'cool') {
    const toC = readNumber(what);
    return toC === null || part('pressure') !== null ? null : { kind, name, toC, leastRateCPerMin: least, mostRateCPerMin: most };
  }
  const window = range(what);
  const pressure = part('pressure') === null ? null : readPressure(part('pressure') ?? '');
  if (kind !== 'soak' || window === null || least === null || (part('pressure') !== null && pressure === null)) return null;
  return { kind, name, lowerC: window[0], upperC: window[1], leastMin: least, mostMin: most, pressure };
}

/** A number, null where it is left out, undefined where it is none. */
function limit(text: string | null): number | null | undefined {
  if (text === null) return null;
  return readNumber(text) ?? undefined;
}
function range(text: string): readonly [number, number] | null {
  const [, from = '', to = ''] = /^(.+?)\s+to\s+(.+)$/i.exec(text) ?? [];
  const [lower, upper] = [readNumber(from), readNumber(to)];
  return lower === null || upper === null ? null : [lower, upper];
}
function readPressure(text: string): Extract<ProgrammeSegment, { kind: 'soak' }>['pressure'] {
  const [, window = '', minutes = ''] = /^(.+?)\s+for\s+(.+)$/i.exec(text) ?? [];
  const [limits, leastMin] = [range(window), readNumber(minutes)];
  return limits === null || leastMin === null ? null : { lowerMbar: limits[0], upperMbar: limits[1], leastMin };
}
export function writeSegments(segments: readonly ProgrammeSegment[]): string {
  const part = (word: string, value: number | null): string => (value === null ? '' : `; ${word} ${typedFigure(value)}`);
  return segments.map((segment) => {
    if (segment.kind !== 'soak') return `${segment.kind}; ${segment.name}; ${typedFigure(segment.toC)}${part('least', segment.leastRateCPerMin)}${part('most', segment.mostRateCPerMin)}`;
    const { pressure } = segment;
    return `soak; ${segment.name}; ${typedFigure(segment.lowerC)} to ${typedFigure(segment.upperC)}${part('least', segment.leastMin)}${part('most', segment.mostMin)}${pressure === null ? '' : `; pressure ${typedFigure(pressure.lowerMbar)} to ${typedFigure(pressure.upperMbar)} for ${typedFigure(pressure.leastMin)}`}`;
  }).join('\n');
}

/** What the fields of a record hold. */
export type FurnaceTexts = Readonly<Record<'id' | 'name' | 'kind' | 'levels' | 'testPositions' | 'rateOverMin' | 'largestGapMin' | 'segments', string>>;
export const EMPTY_TEXTS: FurnaceTexts = { id: '', name: '', kind: '', levels: '', testPositions: '', rateOverMin: '', largestGapMin: '', segments: '' };

export function equipmentTexts({ id, name, kind, levels, testPositions }: EquipmentCard): FurnaceTexts {
  return { ...EMPTY_TEXTS, id, name, kind, levels: writeLevels(levels), testPositions: writeTestPositions({ levels, testPositions }) };
}
export function programmeTexts({ id, name, rateOverMin, largestGapMin, segments }: ProgrammeCard): FurnaceTexts {
  return { ...EMPTY_TEXTS, id, name, rateOverMin: typedFigure(rateOverMin), largestGapMin: typedFigure(largestGapMin), segments: writeSegments(segments) };
}

/** The card the texts say, or the fields that are missing or cannot be read with the line that is wrong. */
export function equipmentOf(texts: FurnaceTexts): EquipmentCard | { readonly wrong: Partial<FurnaceTexts> } {
  const levels = readLevels(texts.levels);
  const tests = 'wrong' in levels ? { items: [] } : readTestPositions(texts.testPositions, levels.items);
  const wrong = { ...missing(texts, ['id', 'name', 'kind', 'levels']), ...('wrong' in levels ? { levels: levels.wrong } : {}), ...('wrong' in tests ? { testPositions: tests.wrong } : {}) };
  if (Object.keys(wrong).length > 0 || 'wrong' in levels || 'wrong' in tests) return { wrong };
  return { id: texts.id.trim(), kind: texts.kind === 'coating' ? 'coating' : 'furnace', name: texts.name.trim(), levels: levels.items, testPositions: tests.items };
}
export function programmeOf(texts: FurnaceTexts): ProgrammeCard | { readonly wrong: Partial<FurnaceTexts> } {
  const segments = readSegments(texts.segments);
  const [rateOverMin, largestGapMin] = [readNumber(texts.rateOverMin), readNumber(texts.largestGapMin)];
  const wrong = {
    ...missing(texts, ['id', 'name', 'segments']), ...(rateOverMin === null || rateOverMin <= 0 ? { rateOverMin: texts.rateOverMin } : {}), ...(largestGapMin === null || largestGapMin <= 0 ? { largestGapMin: texts.largestGapMin } : {}),
    ...('wrong' in segments ? { segments: segments.wrong } : {}),
  };
  if (Object.keys(wrong).length > 0 || 'wrong' in segments || rateOverMin === null || largestGapMin === null) return { wrong };
  return { id: texts.id.trim(), name: texts.name.trim(), rateOverMin, largestGapMin, segments: segments.items };
}

function missing(texts: FurnaceTexts, needed: readonly (keyof FurnaceTexts)[]): Partial<FurnaceTexts> {
  return Object.fromEntries(needed.filter((name) => texts[name].trim() === '').map((name) => [name, '']));
}
