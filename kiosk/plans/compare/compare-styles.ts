import { css } from 'lit';

/** A figure that can be asked for its reason. */
export const compareStyles = css`
  .why { display: inline-flex; align-items: baseline; gap: 0.35em; min-block-size: max(32px, var(--target)); font: inherit; font-family: var(--face-figures); font-weight: 650; color: inherit; background: none; border: 0; border-block-end: 2px dotted var(--line-strong); padding: 0.15em 0.1em 0; cursor: pointer; text-align: start; touch-action: manipulation; }
  .why .ask { font-family: var(--face); font-size: 0.72em; font-weight: 700; color: var(--link); border: 1.5px solid currentColor; border-radius: var(--corner); min-inline-size: 1.45em; text-align: center; line-height: 1.3; align-self: center; }
  .why:active { background: var(--slip-under); }
  @media print { .why { border: 0; min-block-size: 0; } .why .ask { display: none; } }
`;
