import { css } from 'lit';

/** The sheet a drawing lies on: its frame, its caption, the ink of its figures and axes. `--chart-height` is the height of the drawing. */
export const figureStyles = css`
  figure { margin: 0; background: var(--slip); border: var(--rule) solid var(--line-strong); }
  figcaption { padding: 0.4em var(--pad); border-block-end: 3px double var(--line-strong); font-weight: 650; }
  svg { display: block; inline-size: 100%; block-size: var(--chart-height, 260px); }
  .paper { fill: var(--slip); }
  .frame { fill: none; stroke: var(--ink); stroke-width: 1.4; }
  .rung { stroke: var(--line); }
  text { font-family: var(--face-figures); font-size: 13.5px; fill: var(--ink); }
  .axis { font-family: var(--face); fill: var(--ink-soft); }
`;
