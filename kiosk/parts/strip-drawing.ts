import { svg, type SVGTemplateResult } from 'lit';
import { stripScale, type StripLimits, type StripPlace } from './strip-scale.ts';

/** One slot of a sample strip: a piece with its reading, or the gap where one is missing or still to come. */
export interface StripPiece {
  readonly label: string;
  readonly value: number | null;
  readonly text: string;
  readonly standing: 'in' | 'guard' | 'out' | 'missing' | 'waiting' | 'next';
  readonly standingWord: string;
}

const foot = 26;

/**
 * Draws the strip in pixels.
 * @param width inner width, px @param height whole height with the figures under the slots, px @param margin room for limit texts at the left, px
 */
export function stripDrawing(
  pieces: readonly StripPiece[],
  limits: StripLimits,
  { width, height, margin }: { width: number; height: number; margin: number },
): SVGTemplateResult {
  const place = stripScale(limits, pieces.flatMap(({ value }) => (value === null ? [] : [value])));
  const floor = height - foot;
  const y = (value: number): number => floor - place(value).at * floor;
  const slot = Math.max(width - margin, 0) / Math.max(pieces.length, 1);
  const size = Math.max(3.5, Math.min(9, slot * 0.34));
  const every = [1, 2, 5, 10, 20, 50, 100].find((step) => slot * step >= 24) ?? 200;
  const across = Math.max(width - margin, 0);
  const line = (limit: StripLimits['lower'], kind: string) =>
    limit === null ? '' : svg`<line class=${kind} x1=${margin} x2=${width} y1=${y(limit.value)} y2=${y(limit.value)}/>`;
  const band = (from: number | null, to: number | null, kind: string) =>
    from === null || to === null || to <= from ? '' : svg`<rect class=${kind} x=${margin} width=${across} y=${from} height=${to - from}/>`;
  const at = (limit: StripLimits['lower']) => (limit === null ? null : y(limit.value));
  return svg`
    <defs>
      <pattern id="hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line class="hatch" x1="0" x2="0" y1="0" y2="7"/></pattern>
      <pattern id="dots" width="6" height="6" patternUnits="userSpaceOnUse"><circle class="dot" cx="1.5" cy="1.5" r="0.9"/><circle class="dot" cx="4.5" cy="4.5" r="0.9"/></pattern>
    </defs>
    <rect class="sheet" x=${margin} y="0" width=${across} height=${floor}/>
    ${band(limits.upper === null ? null : 0, at(limits.upper), 'beyond')}
    ${band(at(limits.lower), limits.lower === null ? null : floor, 'beyond')}
    ${band(at(limits.upper), at(limits.guardUpper), 'guarded')}
    ${band(at(limits.guardLower), at(limits.lower), 'guarded')}
    ${pieces.map((piece, index) => {
      const x = margin + slot * (index + 0.5);
      const named = (index + 1) % every === 0;
      return svg`<line class="rung" x1=${margin + slot * (index + 1)} x2=${margin + slot * (index + 1)} y1="0" y2=${floor + (named ? 5 : 3)}/>
        ${named || piece.standing === 'next' ? svg`<text class="number" x=${x} y=${height - 6} text-anchor="middle">${piece.label}</text>` : ''}`;
    })}
    ${line(limits.target, 'target')}${line(limits.guardUpper, 'guard')}${line(limits.guardLower, 'guard')}
    ${line(limits.upper, 'wall')}${line(limits.lower, 'wall')}
    ${limitTexts(limits, y).map(({ text, at: height }) => svg`<text class="limit" x=${margin - 8} y=${height + 5} text-anchor="end">${text}</text>`)}
    <rect class="frame" x=${margin} y="0" width=${across} height=${floor}/>
    ${pieces.map((piece, index) => pieceDrawing(piece, margin + slot * (index + 0.5), slot, floor, size, place))}`;
}

function pieceDrawing(
  { standing, value, text }: StripPiece, x: number, slot: number, floor: number, size: number, place: (value: number) => StripPlace,
): SVGTemplateResult | '' {
  if (standing === 'next')
    return svg`<rect class="next" x=${x - slot / 2} y="0" width=${slot} height=${floor}/><path class="pointer" d="M${x - size} ${floor - 4}h${2 * size}L${x} ${floor - 4 - 1.8 * size}z"/>`;
  if (standing === 'missing')
    return svg`<rect class="missing box" x=${x - size} y=${floor / 2 - size} width=${2 * size} height=${2 * size}/><path class="missing" d="M${x - size * 1.5} ${floor / 2 + size * 1.5}l${size * 3} ${-size * 3}"/>`;
  if (standing === 'waiting' || value === null) return '';
  const { at, beyond } = place(value);
  const y = floor - at * floor;
  const turned = (r: number) => `M${x} ${y - r}L${x + r} ${y}L${x} ${y + r}L${x - r} ${y}z`;
  if (standing === 'in') return svg`<circle class="in" cx=${x} cy=${y} r=${size * 0.72}/>`;
  if (standing === 'guard')
    return svg`<path class="edge" d=${turned(size)}/><path class="half" d="M${x - size} ${y}h${2 * size}L${x} ${y + size}z"/>`;
  const r = size * 1.25;
  const words = svg`<text class="outside" x=${x} y=${beyond === 'above' || at > 0.85 ? y + r + 17 : y - r - 5} text-anchor="middle">${text}</text>`;
  const arrow = beyond === 'above' ? `M${x - r} ${y + r}L${x} ${y - r}L${x + r} ${y + r}` : `M${x - r} ${y - r}L${x} ${y + r}L${x + r} ${y - r}`;
  return beyond === 'no'
    ? svg`<path class="out" d="${turned(r)}M${x - r} ${y}h${2 * r}"/>${words}`
    : svg`<path class="out" d=${arrow}/>${words}`;
}

// Walls and target keep their texts at their lines; a guard's text that would touch its wall's moves towards the middle. Where that leaves
// no room between the guards, the target's text is left out: its line stays.
function limitTexts(limits: StripLimits, y: (value: number) => number): readonly { readonly text: string; readonly at: number }[] {
  const [room, textHeight] = [17, 14];
  const [upper, lower] = [limits.upper, limits.lower].map((line) => (line === null ? null : y(line.value)));
  const placed: { text: string; at: number }[] = [];
  const set = (line: StripLimits['lower'], at: (natural: number) => number): void => {
    if (line !== null) placed.push({ text: line.text, at: at(y(line.value)) });
  };
  set(limits.upper, (natural) => natural);
  set(limits.guardUpper, (natural) => Math.max(natural, (upper ?? natural - room) + room));
  set(limits.guardLower, (natural) => Math.min(natural, (lower ?? natural + room) - room));
  set(limits.lower, (natural) => natural);
  const { target } = limits;
  if (target !== null && placed.every(({ at }) => Math.abs(at - y(target.value)) >= textHeight)) set(target, (natural) => natural);
  return placed;
}
