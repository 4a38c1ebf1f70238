import { css } from 'lit';

/** Looks of the sign-on: one slip with the person on the left and the PIN on the right. */
export const signOnStyles = css`
  .sheet { max-inline-size: 1240px; margin: 0 auto; background: var(--slip); border-block-start: calc(3 * var(--rule-strong)) solid var(--ink); padding: var(--pad) calc(1.6 * var(--pad)) calc(1.6 * var(--pad)); }
  header { display: flex; justify-content: space-between; align-items: center; gap: var(--gap); border-block-end: 4px double var(--line); padding-block-end: calc(0.6 * var(--pad)); margin-block-end: var(--pad); }
  h1 { font-size: calc(1.35 * var(--text-large)); line-height: 1.1; margin: 0; }
  h2 { font-size: var(--text-large); padding-block-end: var(--pad); }
  .demo { border: 2px dashed var(--held); color: var(--held); font-weight: 650; padding: 0.2em 0.8em; }
  .sign { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: calc(2 * var(--gap)); align-items: start; --key-size: calc(17 * var(--true-mm)); }
  .who { display: grid; gap: var(--pad); min-inline-size: 0; }
  .stands { display: flex; justify-content: space-between; align-items: center; gap: var(--gap); }
  .stands p { flex: 1; }
  .stands strong { font-size: var(--text-large); line-height: 1.2; }
  .benches { display: grid; grid-template-columns: repeat(auto-fill, minmax(15rem, 1fr)); gap: var(--gap); }
  .people ul { list-style: none; display: grid; grid-template-columns: repeat(auto-fill, minmax(15rem, 1fr)); gap: var(--gap); max-block-size: 20.5rem; overflow: auto; padding: 4px; }
  .person { display: grid; text-align: start; inline-size: 100%; font-size: var(--text-small); line-height: 1.2; }
  .person strong { font-size: var(--text); }
  .person[aria-pressed='true'] { background: var(--calm-ground); color: var(--on-calm); border-color: var(--calm-ground); }
  @media (max-width: 1000px) { .sign { grid-template-columns: minmax(0, 1fr); } gh-pin-pad { justify-self: center; } .people ul { max-block-size: 11.5rem; } }
`;
