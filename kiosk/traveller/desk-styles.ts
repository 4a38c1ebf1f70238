import { css } from 'lit';

/** Looks of the traveller desk. */
export const deskStyles = css`
  :host { display: grid; gap: var(--gap); align-content: start; }
  .bar { display: flex; align-items: center; gap: calc(0.6 * var(--gap)); background: var(--slip); border-block-end: 4px double var(--line-strong); padding-inline: 4px; margin: calc(-1 * var(--pad)) calc(-1 * var(--pad)) 0; }
  .bar h1 { flex: 1; display: flex; align-items: baseline; gap: 0.5em; font-size: var(--text); font-weight: 400; min-inline-size: 0; margin: 0; }
  .bar .id { font-family: var(--face-figures); font-size: calc(1.25 * var(--text-large)); font-weight: 700; white-space: nowrap; }
  .bar .what { overflow: hidden; text-overflow: ellipsis; white-space: nowrap; color: var(--ink-soft); }
  .key { display: inline-flex; align-items: center; justify-content: center; text-align: center; font: inherit; color: var(--ink); background: var(--slip); border: var(--rule-strong) solid var(--line-strong); border-block-end-width: calc(2px + var(--rule-strong)); border-radius: var(--corner); min-block-size: var(--target); min-inline-size: var(--target); padding: 0.15em 0.7em; text-decoration: none; cursor: pointer; line-height: 1.15; max-inline-size: 9em; }
  .foot { display: grid; gap: var(--gap); min-inline-size: 0; }
  .others { display: flex; flex-wrap: wrap; align-items: center; gap: var(--gap); }
  .severities { display: flex; gap: var(--gap); }
  @media (max-width: 1000px) { .bar { flex-wrap: wrap; padding-block: 4px; } .bar h1 { flex-basis: 60%; } }
  @media print { .bar, .foot { display: none; } }
`;
