import { css } from 'lit';

/** The packing bench: figures to be read from where the scales stand. */
export const packStyles = css`
  a.big { min-block-size: var(--target); display: inline-flex; align-items: center; padding-inline: var(--pad); border: var(--rule) solid var(--line-strong); background: var(--slip); }
  .aside { margin-inline-start: auto; }
  .balance { display: grid; grid-template-columns: minmax(max-content, 1.6fr) repeat(3, minmax(min-content, 1fr)); margin: 0; background: var(--slip); border-block: var(--rule-strong) solid var(--line-strong); }
  .balance > div { padding: 0.2em var(--pad) 0.4em; border-inline-end: var(--rule) solid var(--line); }
  .balance > div:last-child { border-inline-end: 0; }
  .balance dt { font-size: var(--text-small); color: var(--ink-soft); }
  .balance dd { margin: 0; font-size: var(--text-demand); font-weight: 700; line-height: 1; font-family: var(--face-figures); }
  .balance > div:not(:first-child) dd { font-size: calc(0.6 * var(--text-demand)); line-height: 1.66; }
  .done { font-size: var(--text-large); font-weight: 650; color: var(--good); }
  .label { display: block; inline-size: min(100%, 46rem); aspect-ratio: 2; background: #fff; border: var(--rule) solid var(--line-strong); }
  .hand { display: grid; grid-template-columns: minmax(0, 1.15fr) minmax(0, 1fr); gap: calc(1.4 * var(--pad)); align-items: start; }
  .hand > div { display: grid; gap: var(--pad); }
  @media (max-width: 1000px) { .hand { grid-template-columns: minmax(0, 1fr); } }
  .step { font-size: var(--text-large); font-weight: 700; }
  .read { font-size: var(--text-large); color: var(--good); font-weight: 650; }
  .rows { list-style: none; display: grid; background: var(--slip); border-block: var(--rule-strong) solid var(--line-strong); max-block-size: 60vh; overflow-y: auto; }
  .row { display: grid; grid-template-columns: minmax(8em, 1fr) minmax(4em, 0.6fr) minmax(9em, 1.4fr); align-items: center; gap: 0.2em var(--pad); min-block-size: var(--target); padding-inline: var(--pad); color: var(--ink); text-decoration: none; border-block-end: var(--rule) solid var(--line); }
  .row[aria-current] { background: var(--slip-under); font-weight: 700; box-shadow: inset 6px 0 0 var(--ink); }
  .row:focus-visible { outline-offset: -4px; }
  .row .figure { overflow-wrap: anywhere; }
  summary { min-block-size: var(--target); display: flex; align-items: center; padding-inline: var(--pad); cursor: pointer; }
`;
