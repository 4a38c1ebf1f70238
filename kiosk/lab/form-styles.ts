import { css } from 'lit';

/** Looks of the lab's forms. */
export const formStyles = css`
  form { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--gap); }
  .pair { display: grid; gap: var(--gap); grid-template-columns: repeat(auto-fit, minmax(13rem, 1fr)); align-items: start; }
  .raw { display: grid; gap: var(--gap); grid-template-columns: minmax(0, 1.2fr) minmax(0, 1.2fr) minmax(0, 0.8fr) auto; align-items: end; padding-block-end: var(--gap); border-block-end: var(--rule) solid var(--line); }
  .keys { display: flex; flex-wrap: wrap; align-items: center; justify-content: space-between; gap: var(--gap); }
  h3 { font-size: var(--text); }
  .wrong { color: var(--bad); font-weight: 650; }
  @media (max-width: 700px) { .raw { grid-template-columns: minmax(0, 1fr); } }
`;
