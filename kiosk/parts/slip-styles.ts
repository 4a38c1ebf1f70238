import { css } from 'lit';

/** A slip of the traveller: punched edge, ledger margin, body, torn off along a perforation. */
export const slipStyles = css`
  .slip {
    display: grid;
    grid-template-columns: 26px minmax(5.2em, auto) 1fr auto;
    grid-template-areas: 'edge margin body side' 'edge margin detail detail';
    background: var(--slip);
    border-block-end: var(--rule-strong) dashed var(--line-strong);
  }
  /* Evenly punched holes show the tray beneath; each has the shadow line of a real hole. */
  .edge {
    grid-area: edge;
    border-inline-end: var(--rule) solid var(--line);
    background: radial-gradient(circle at 50% 50%, var(--tray-deep) 0 4.4px, var(--line-strong) 4.5px 5.3px, transparent 5.6px) center top / 26px 22px
      round;
    print-color-adjust: exact;
  }
  .margin {
    grid-area: margin;
    display: flex;
    flex-direction: column;
    padding: calc(0.8 * var(--pad)) var(--pad);
    border-inline-end: 4px double var(--line);
    line-height: 1.3;
    white-space: nowrap;
  }
  .number {
    font-size: var(--text-small);
    color: var(--ink-soft);
  }
  .body {
    grid-area: body;
    padding: calc(0.8 * var(--pad)) var(--pad);
    min-inline-size: 0;
  }
  .sentence {
    text-wrap: pretty;
    overflow-wrap: anywhere;
  }
  .strong {
    font-size: var(--text-large);
    line-height: 1.2;
  }
  .by {
    display: flex;
    flex-wrap: wrap;
    gap: 0 1.2em;
  }
  .standing {
    font-size: var(--text-small);
  }
  .detail {
    grid-area: detail;
    min-inline-size: 0;
    padding-inline: var(--pad);
    overflow-x: auto;
  }
  .detail ::slotted(*) {
    margin-block-end: var(--pad);
  }
  .detail[hidden] {
    display: none;
  }
  .side {
    grid-area: side;
    display: flex;
    flex-wrap: wrap;
    align-items: start;
    align-content: start;
    justify-content: end;
    gap: var(--gap);
    padding: calc(0.6 * var(--pad)) var(--pad);
  }
  .fold {
    display: grid;
    place-items: center;
    padding: 0;
    border-color: transparent;
    background: none;
  }
  .fold svg {
    inline-size: 1.3em;
    fill: none;
    stroke: currentColor;
    stroke-width: 2.6;
  }
  /* Kept here: still loose, laid in from the right, not yet torn into the run. */
  :host([state='kept']) .slip {
    margin-inline-start: 26px;
    grid-template-columns: minmax(5.2em, auto) 1fr auto;
    grid-template-areas: 'margin body side' 'margin detail detail';
    background: var(--slip-under);
    outline: var(--rule-strong) dashed var(--held);
    outline-offset: calc(-1 * var(--rule-strong));
  }
  :host([state='kept']) .edge {
    display: none;
  }
  :host([state='refused']) .slip {
    outline: calc(2 * var(--rule-strong)) solid var(--bad);
    outline-offset: calc(-2 * var(--rule-strong));
  }
  :host([state='refused']) .sentence,
  :host([state='corrected']) .sentence {
    text-decoration: line-through 2px;
    color: var(--ink-soft);
  }
  @media print {
    .slip {
      break-inside: avoid;
    }
    .detail[hidden] {
      display: block;
    }
  }
`;
