import { css } from 'lit';

/** Looks of the keypad: a figure window over a block of keys. */
export const keypadStyles = css`
  :host {
    --key: var(--key-size, var(--target-primary, 48px));
    inline-size: fit-content;
  }
  .pad {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--gap);
    inline-size: calc(4 * var(--key) + 3 * var(--gap));
  }
  .display {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 2px;
  }
  .window {
    display: flex;
    align-items: baseline;
    gap: 0.3em;
    background: var(--slip);
    border-block-end: 3px double var(--line-strong);
    padding-inline: var(--pad);
    font-size: var(--text-key);
  }
  .window:focus-within {
    outline: 3px solid var(--focus);
    outline-offset: 2px;
  }
  input {
    flex: 1;
    inline-size: 0;
    min-inline-size: 0;
    font: inherit;
    font-family: var(--face-figures);
    font-size: 1.25em;
    font-weight: 600;
    line-height: 1.25;
    min-block-size: var(--target);
    text-align: end;
    color: inherit;
    background: none;
    border: 0;
    padding: 0;
    outline: none;
  }
  .unit {
    font-size: 0.7em;
    color: var(--ink-soft);
  }
  .question {
    padding: 0.5em 0.7em;
    color: var(--on-held);
    background: var(--held-ground);
    border-inline-start: 0.5em solid var(--on-held);
    font-weight: 600;
  }
  .question[hidden] {
    display: none;
  }
  .keys {
    display: grid;
    grid-template-columns: repeat(4, var(--key));
    grid-auto-rows: var(--key);
    gap: var(--gap);
  }
  .key {
    min-inline-size: 0;
    min-block-size: 0;
    padding: 0;
    overflow: hidden;
  }
  .digit {
    font-family: var(--face-figures);
    font-size: var(--text-key);
    font-weight: 600;
  }
  .side {
    background: var(--slip-under);
    font-size: var(--text-small);
  }
  .side svg {
    inline-size: 1.7em;
    block-size: 1.7em;
  }
  .word {
    display: var(--key-words, block);
    line-height: 1.1;
  }
  .broad {
    grid-column: span 2;
  }
  .tall {
    grid-row: span 2;
  }
  .key.primary {
    font-size: var(--text-large);
  }
  :host([busy]) .digit,
  :host([busy]) .side {
    background: none;
  }
`;
