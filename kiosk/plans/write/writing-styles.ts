import { css } from 'lit';

/** How writing a plan is laid out. Desk density, but every target large enough for a finger. */
export const writingStyles = css`
  :host { --target: 42px; --target-primary: 46px; --gap: 8px; }
  .writing { display: grid; gap: calc(1.6 * var(--pad)); grid-template-columns: minmax(0, 1fr); }
  .sides { display: grid; gap: calc(1.6 * var(--pad)); grid-template-columns: minmax(13rem, 17rem) minmax(0, 1fr); align-items: start; }
  gh-plan-outline { position: sticky; inset-block-start: 0; max-block-size: calc(100dvh - 21rem); overflow: auto; }
  .written { min-inline-size: 0; }
  .foot { position: sticky; inset-block-end: calc(2 * var(--text) + 1px); z-index: 1; display: flex; flex-wrap: wrap; align-items: center; gap: var(--gap); background: var(--slip); border: var(--rule-strong) solid var(--line-strong); padding: var(--pad); }
  .foot p { flex: 1 1 8rem; font-weight: 650; }
  h4 { font-size: var(--text); font-weight: 700; border-block-start: var(--rule-strong) solid var(--line); padding-block-start: var(--pad); margin-block-start: calc(0.6 * var(--pad)); }
  .kind { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: var(--gap); align-items: end; border-block-end: var(--rule) solid var(--line); padding-block-end: var(--gap); }
  @media (max-width: 40rem) { .sides { grid-template-columns: minmax(0, 1fr); } gh-plan-outline { position: static; max-block-size: none; } .kind { grid-template-columns: minmax(0, 1fr); } }
`;
