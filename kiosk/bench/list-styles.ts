import { css } from 'lit';

/** Looks of a list desk: sections of rows, each under a ruled head. */
export const listStyles = css`
  :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: calc(1.4 * var(--gap)); align-content: start; }
  .head { display: flex; flex-wrap: wrap; align-items: center; justify-content: space-between; gap: var(--gap); }
  h1 { font-size: calc(1.7 * var(--text-large)); line-height: 1.1; margin: 0; }
  h2 { font-size: var(--text-large); border-block-end: 4px double var(--line-strong); padding-block-end: 0.15em; display: flex; gap: 0.6em; align-items: baseline; }
  .count { font-family: var(--face-figures); font-weight: 400; color: var(--ink-soft); }
  section { display: grid; grid-template-columns: minmax(0, 1fr); }
  .none { padding: 0.6em var(--pad); background: var(--slip); color: var(--ink-soft); }
  .dues { list-style: none; margin: 0; padding: 0; background: var(--slip); }
  .dues li { display: flex; flex-wrap: wrap; gap: 0.2em 1em; padding: 0.5em var(--pad); border-block-end: var(--rule) solid var(--line); align-items: baseline; justify-content: space-between; }
  .old { color: var(--held); font-weight: 650; }
  .keys { display: flex; flex-wrap: wrap; gap: var(--gap); }
  @media print { .keys { display: none; } }
`;
