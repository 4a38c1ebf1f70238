import { css } from 'lit';

/** Looks of the traveller desk. */
export const deskStyles = css`
  :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--gap); align-content: start; }
  :host([working]) { gap: calc(0.55 * var(--gap)); padding-block-end: var(--target); }
  @media (min-width: 1001px) {
    :host([working]) gh-kiosk-outbox { position: fixed; inset-inline: 0; }
    /* The keypad reaches down to the edge of the screen: the line ends where it begins. */
    :host([working][keypad]) gh-kiosk-outbox { inset-inline-end: calc(4 * var(--target-primary) + 4.5 * var(--gap)); }
  }
  .bar { display: flex; align-items: center; gap: calc(0.6 * var(--gap)); background: var(--slip); border-block-end: 4px double var(--line-strong); padding-inline: 4px; margin: calc(-1 * var(--pad)) calc(-1 * var(--pad)) 0; }
  .bar h1 { flex: 1; display: flex; align-items: baseline; gap: 0.5em; font-size: var(--text); font-weight: 400; min-inline-size: 0; margin: 0; }
  .bar .id { font-family: var(--face-figures); font-size: calc(1.25 * var(--text-large)); font-weight: 700; white-space: nowrap; }
  .bar .what { overflow: hidden; text-overflow: ellipsis; white-space: nowrap; color: var(--ink-soft); }
  .bar .key { max-inline-size: 9em; }
  .foot { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--gap); min-inline-size: 0; }
  /* Before a verdict its place takes no room, but its live region must be on the page. */
  gh-verdict-panel.none { position: absolute; }
  .others { display: flex; flex-wrap: wrap; align-items: center; gap: var(--gap); }
  .severities { display: flex; gap: var(--gap); }
  @media (max-width: 1000px) { .bar { gap: 6px; } .bar > * { --pad: 6px; } .bar .id { font-size: var(--text-large); } .bar .what { display: none; } }
  @media print { .bar, .foot { display: none; } }
`;
