import { css } from 'lit';

/** A link that looks and feels like a key: it leads somewhere, and is as easy to hit. */
export const linkKey = css`
  a.key, button.key { display: inline-flex; align-items: center; justify-content: center; text-align: center; font: inherit; color: var(--ink); background: var(--slip); border: var(--rule-strong) solid var(--line-strong); border-block-end-width: calc(2px + var(--rule-strong)); border-radius: var(--corner); min-block-size: var(--target); min-inline-size: var(--target); padding: 0.15em 0.7em; text-decoration: none; cursor: pointer; line-height: 1.15; touch-action: manipulation; }
  a.key:active, button.key:active { background: var(--slip-under); border-block-end-width: var(--rule-strong); border-block-start-width: calc(2px + var(--rule-strong)); }
  a.key.primary { min-block-size: var(--target-primary); background: var(--link-ground); color: var(--on-link); border-color: var(--link-ground); font-weight: 650; font-size: var(--text-large); padding-inline: calc(1.4 * var(--pad)); }
  @media print { a.key, button.key { display: none; } }
`;
