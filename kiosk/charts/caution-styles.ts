import { css } from 'lit';

/** A line that speaks against a figure, with its mark. */
export const cautionStyles = css`
  .caution { display: grid; grid-template-columns: auto minmax(0, 1fr); gap: 0.6em; align-items: baseline; color: var(--held); font-weight: 650; }
`;

/** What is filled in, one below the other. */
export const formStyles = css`.form { display: grid; gap: calc(1.2 * var(--pad)); grid-template-columns: minmax(0, 1fr); }`;
