import { css } from 'lit';

/** A figure that is itself the key to its reason. */
export const whyKeyStyles = css`
  :host { display: inline-block; font: inherit; max-inline-size: 100%; }
  button { display: inline-flex; align-items: center; gap: 0.45em; min-block-size: max(32px, var(--target)); font: inherit; font-family: var(--face-figures); font-weight: 650; color: inherit; background: none; border: 0; padding: 0; cursor: pointer; text-align: start; touch-action: manipulation; }
  .figure { border-block-end: 2px dotted var(--line-strong); overflow-wrap: break-word; min-inline-size: 0; }
  .ask { font-family: var(--face); font-size: 0.75em; font-weight: 700; color: var(--link); border: 1.5px solid currentColor; border-radius: var(--corner); min-inline-size: 1.5em; text-align: center; line-height: 1.35; flex: none; }
  button:active { background: var(--slip-under); }
  @media print { button { min-block-size: 0; } .figure { border: 0; } .ask { display: none; } }
`;
