import { css } from 'lit';

/** A ruled sheet: heavy line under the head, hair lines between rows, figures to the right. */
export const tableStyles = css`
  .top { display: flex; flex-wrap: wrap; justify-content: space-between; align-items: end; gap: var(--gap); padding-block-end: 0.3em; }
  .caption { font-weight: 700; }
  .room { overflow-x: auto; background: var(--slip); border-block-end: var(--rule-strong) solid var(--line-strong); border-block-start: calc(1.5 * var(--rule-strong)) solid var(--ink); }
  .more { mask-image: linear-gradient(to left, transparent, black 3.5em); }
  :host([tall]) .room { max-block-size: var(--table-height, 70vh); overflow-y: auto; }
  table { inline-size: 100%; border-collapse: separate; border-spacing: 0; table-layout: var(--table-layout, auto); }
  thead { position: sticky; inset-block-start: 0; z-index: 1; background: var(--slip); }
  th, td { text-align: start; vertical-align: baseline; padding: 0.3em 0.7em; border-block-end: var(--rule) solid var(--line); font-weight: 400; }
  thead tr:first-child th { font-size: var(--text-small); color: var(--ink-soft); vertical-align: middle; letter-spacing: 0.02em; }
  thead tr:last-child > * { border-block-end: 3px double var(--line-strong); }
  tbody th { font-family: var(--face-figures); font-weight: 650; }
  tbody tr:last-child > * { border-block-end: 0; }
  th + th, td + td, th + td { border-inline-start: var(--rule) solid var(--line); }
  .number { text-align: end; font-family: var(--face-figures); white-space: nowrap; }
  thead .number { font-family: inherit; }
  .unit { white-space: nowrap; }
  .none { color: var(--ink-soft); padding-block: 1em; }
  a { display: inline-block; vertical-align: top; color: var(--link); text-underline-offset: 0.2em; min-block-size: 24px; }
  .sort { display: inline-flex; align-items: center; gap: 0.5em; font: inherit; letter-spacing: inherit; color: inherit; background: none; border: 0; padding: 0; min-block-size: var(--target); min-inline-size: var(--target); cursor: pointer; text-align: inherit; }
  .number .sort { justify-content: end; }
  .sort svg { inline-size: 0.65em; block-size: 1em; fill: none; stroke: currentColor; flex: none; }
  .sort .on { fill: currentColor; }
  [aria-sort] { font-weight: 700; }
  .filters td { padding: 0.2em 0.35em; }
  input { inline-size: 100%; min-inline-size: 5em; min-block-size: max(26px, var(--target)); font: inherit; font-family: var(--face-figures); color: inherit; background: var(--slip-under); border: var(--rule) solid var(--line-strong); border-radius: var(--corner); padding-inline: 0.4em; }
  .csv { font-size: var(--text-small); }
  @media print {
    .room { overflow: visible; mask-image: none; max-block-size: none !important; }
    thead { position: static; display: table-header-group; }
    .filters { display: none; }
    tr { break-inside: avoid; }
  }
`;
