import { css } from 'lit';

/** What every part shares: box model, figures, focus ring, words only readers hear. */
export const partStyles = css`
  :host {
    display: block;
    color: var(--ink, CanvasText);
    font-family: var(--face, sans-serif);
    font-size: var(--text, 1rem);
    line-height: 1.35;
    font-variant-numeric: tabular-nums lining-nums;
  }
  :host([hidden]) {
    display: none !important;
  }
  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }
  p,
  h2,
  h3,
  h4,
  ul,
  ol {
    margin: 0;
    padding: 0;
  }
  :focus-visible {
    outline: 3px solid var(--focus, Highlight);
    outline-offset: 2px;
  }
  .unseen {
    position: absolute;
    inline-size: 1px;
    block-size: 1px;
    margin: -1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
  .figure {
    font-family: var(--face-figures, monospace);
  }
  /* A printed form's small label. */
  .printed {
    font-size: var(--text-small, 0.8rem);
    color: var(--ink-soft, inherit);
    letter-spacing: 0.02em;
  }
`;

/** A key that can be pressed: paper on a thicker foot, pressed flat. */
export const keyStyles = css`
  .key {
    font: inherit;
    color: var(--ink, CanvasText);
    background: var(--slip, Canvas);
    border: var(--rule-strong, 2px) solid var(--line-strong, currentColor);
    border-block-end-width: calc(2px + var(--rule-strong, 2px));
    border-radius: var(--corner, 2px);
    min-inline-size: var(--target, 44px);
    min-block-size: var(--target, 44px);
    padding: 0.15em 0.6em;
    cursor: pointer;
    touch-action: manipulation;
    user-select: none;
    -webkit-user-select: none;
  }
  .key:active:not([aria-disabled='true']) {
    background: var(--slip-under, Canvas);
    border-block-end-width: var(--rule-strong, 2px);
    border-block-start-width: calc(2px + var(--rule-strong, 2px));
  }
  .key[aria-disabled='true'],
  .key:disabled {
    color: var(--ink-soft, GrayText);
    border-style: dotted;
    cursor: default;
  }
  .key.primary {
    min-block-size: var(--target-primary, 48px);
    background: var(--link-ground, CanvasText);
    color: var(--on-link, Canvas);
    border-color: var(--link-ground, CanvasText);
    font-weight: 650;
  }
  .key.primary:active:not([aria-disabled='true']) {
    background: var(--calm-ground, CanvasText);
    color: var(--on-calm, Canvas);
  }
  .key.primary[aria-disabled='true'] {
    background: var(--slip-under, Canvas);
    color: var(--ink-soft, GrayText);
  }
  @media (forced-colors: active) {
    .key.primary {
      border-width: 4px;
    }
  }
  @media print {
    .key {
      display: none !important;
    }
  }
`;
