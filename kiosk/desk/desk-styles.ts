import { css } from 'lit';

/** How a desk's pages are laid out; the parts bring their own looks. */
export const deskStyles = css`
  .page { display: grid; gap: calc(2 * var(--pad)); padding-block: calc(0.5 * var(--pad)); --key-size: max(var(--target-primary), 52px); grid-template-columns: minmax(0, 1fr); align-content: start; max-inline-size: 1600px; }
  .page:focus { outline: none; }
  h1 { font-size: calc(1.3 * var(--text-large)); margin: 0; font-weight: 700; line-height: 1.15; }
  h2 { font-size: var(--text-large); font-weight: 700; }
  h3 { font-size: var(--text); font-weight: 700; }
  .head { display: flex; flex-wrap: wrap; justify-content: space-between; align-items: end; gap: var(--gap); }
  .keys { display: flex; flex-wrap: wrap; gap: var(--gap); align-items: end; }
  .soft { color: var(--ink-soft); }
  .small { font-size: var(--text-small); }
  .sheet { background: var(--slip); border: var(--rule) solid var(--line-strong); padding: calc(1.4 * var(--pad)); display: grid; gap: calc(1.2 * var(--pad)); grid-template-columns: minmax(0, 1fr); }
  .halves { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(22rem, 100%), 1fr)); gap: calc(1.4 * var(--pad)); align-items: start; }
  .fields { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(13rem, 100%), 1fr)); gap: var(--gap) calc(1.4 * var(--pad)); align-items: start; }
  .facts { display: flex; flex-wrap: wrap; margin: 0; background: var(--slip); border: var(--rule) solid var(--line-strong); }
  .facts > div { flex: 1 1 auto; padding: 0.3em calc(1.2 * var(--pad)); border-inline-end: var(--rule) solid var(--line); }
  .facts dt { font-size: var(--text-small); color: var(--ink-soft); }
  .facts dd { margin: 0; font-family: var(--face-figures); font-weight: 650; overflow-wrap: anywhere; }
  .lines { list-style: none; display: grid; gap: 0; background: var(--slip); border-block: var(--rule-strong) solid var(--line-strong); }
  .lines > li { padding: 0.4em var(--pad); border-block-end: var(--rule) solid var(--line); display: flex; flex-wrap: wrap; gap: 0.2em 0.9em; align-items: baseline; }
  .lines > li:last-child { border-block-end: 0; }
  a { color: var(--link); text-underline-offset: 0.2em; display: inline-block; min-block-size: 24px; }
  form { display: contents; }
  .pin-less { color: var(--ink-soft); }
  @media print { .screen-only { display: none !important; } .page { padding: 0; } }
`;
