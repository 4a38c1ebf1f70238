import { css } from 'lit';
import { linkKey } from '../link-key.ts';

/** Looks of gate work: what is asked on the left, the keys that answer it on the right; one above the other on a narrow screen. */
export const workStyles = [linkKey, css`
  .work { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: var(--gap); align-items: start; }
  .work.keys-wide { grid-template-columns: minmax(0, 1fr) minmax(0, 1.1fr); }
  .pile { display: grid; grid-template-columns: minmax(0, 1fr); gap: calc(0.7 * var(--gap)); min-inline-size: 0; align-content: start; }
  @media (min-width: 1001px) {
    .work:has(.more) { grid-template-rows: auto 1fr; }
    .work > .more { grid-column: 1; grid-row: 2; }
    .work > gh-keypad { grid-column: 2; grid-row: 1 / span 2; }
  }
  .row { display: flex; flex-wrap: wrap; gap: var(--gap); align-items: center; }
  .keys { --text-large: 23px; display: grid; gap: var(--gap); grid-template-columns: repeat(auto-fill, minmax(14.5rem, 1fr)); align-content: start; }
  gh-sheet gh-keypad { --key-size: calc(15 * var(--true-mm)); margin-block-start: var(--pad); }
  .soft { color: var(--ink-soft); }
  gh-sample-strip { --strip-height: 116px; }
  /* Clear of the outbox line when it is brought into sight. */
  gh-signature { scroll-margin-block-end: calc(10 * var(--true-mm)); }
  gh-keypad { --target: calc(12.5 * var(--true-mm)); }
  gh-notice { margin-block-end: var(--gap); }
  .with { display: flex; flex-wrap: wrap; align-items: center; justify-content: space-between; gap: 0.2em var(--gap); background: var(--slip); border: var(--rule) solid var(--line); padding: 0.2em var(--pad); }
  .with strong { font-family: var(--face-figures); }
  table { border-collapse: collapse; background: var(--slip); inline-size: 100%; }
  th, td { text-align: start; padding: 0.35em var(--pad); border-block-end: var(--rule) solid var(--line); font-weight: 400; }
  thead th { color: var(--ink-soft); font-size: var(--text-small); }
  td { font-family: var(--face-figures); text-align: end; font-size: var(--text-large); }
  thead th:not(:first-child) { text-align: end; }
  caption { text-align: start; color: var(--ink-soft); font-size: var(--text-small); padding: 0.3em var(--pad); }
  table.layers td { font-size: inherit; font-variant-numeric: tabular-nums; }
  table.layers td.out { font-weight: 700; color: var(--bad); }
  table.layers small { display: block; font-family: var(--face); font-weight: 400; }
  ul.bands { list-style: none; padding: 0.3em var(--pad); background: var(--slip); border: var(--rule) solid var(--line); }
  ul.bands .low, ul.bands .high { font-weight: 700; color: var(--bad); }
  ul.bands .warnLow, ul.bands .warnHigh { font-weight: 600; }
  @media (max-width: 1000px) {
    .work, .work.keys-wide { grid-template-columns: minmax(0, 1fr); }
    .work > gh-keypad, .work > .pad { justify-self: center; }
    .work > gh-keypad { --key-size: calc(18 * var(--true-mm)); }
    /* On an upright tablet the whole keypad stays in sight below the strip. */
    .work > gh-keypad { --key-size: calc(16 * var(--true-mm)); --target-primary: var(--key-size); }
    gh-sample-strip { --strip-height: 105px; }
  }
`];
