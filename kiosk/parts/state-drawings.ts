import { svg, type SVGTemplateResult } from 'lit';
import type { StateName } from './state-name.ts';

/*
 * Drawn on a 24 × 24 grid in the current colour. The alphabet is the trade's own: an insert with its hole (whole, broken, short of a
 * corner, half worked), the hold tag, the jaws of a gauge closing or opening for switching states, a slip and its tray for entries.
 */
const whole = 'M5 3h14l2 2v14l-2 2H5l-2-2V5zM12 8.5a3.5 3.5 0 1 0 0 7 3.5 3.5 0 0 0 0-7z';
const fill = (path: string): SVGTemplateResult => svg`<path d=${path} fill="currentColor" fill-rule="evenodd"/>`;
const line = (path: string, dashes = 'none'): SVGTemplateResult =>
  svg`<path d=${path} fill="none" stroke="currentColor" stroke-width="2.4" stroke-dasharray=${dashes}/>`;

/** The drawing of each state, to be set inside an `<svg viewBox="0 0 24 24">`. */
export const stateDrawings: Readonly<Record<StateName, SVGTemplateResult>> = {
  accepted: fill(whole),
  rejected: fill('M4 2h12l-4.5 7 2.7 2.8L5.5 19H2V4zM20.5 5H22v15l-2 2H7.5l10.4-9.8-3-3.2z'),
  hold: fill('M1 12 7.5 3H23v18H7.5zM7 10a2 2 0 1 0 0 4 2 2 0 0 0 0-4zm5-2.5v9h2.6v-9zm4.8 0v9h2.6v-9z'),
  waiting: line('M4.2 4.2h15.6v15.6H4.2z', '3.9 3.9'),
  open: svg`${line('M4.2 4.2h15.6v15.6H4.2z')}${fill('M4 12h16v8H4z')}`,
  'next-sample': svg`${line('M8 8V3.2h12.8V16H16')}${fill('M2 8h14v14H2zm7 4.5a2.5 2.5 0 1 0 0 5 2.5 2.5 0 0 0 0-5z')}`,
  normal: svg`${line('M2 5.5h20M2 18.5h20')}${fill('M12 9.4a2.6 2.6 0 1 0 0 5.2 2.6 2.6 0 0 0 0-5.2z')}`,
  tightened: svg`${line('M2 9.4h20M2 14.6h20')}${fill('M6.5 1h11L12 7zM6.5 23h11L12 17z')}`,
  reduced: svg`${line('M2 8.2h20M2 15.8h20')}${fill('M6.5 6.5h11L12 .5zM6.5 17.5h11L12 23.5z')}`,
  discontinued: svg`${line('M1 7h7M16 7h7M1 17h7M16 17h7')}${fill('M10.2 1.5h3.6v21h-3.6z')}`,
  concession: svg`${fill('M5 3h7l9 9v7l-2 2H5l-2-2V5zm5.5 7a3 3 0 1 0 0 6 3 3 0 0 0 0-6z')}${line('M15.5 3H21v5.5', '2.2 1.6')}`,
  released: fill(
    'm12 .8 2.6 2.7 3.6-.8.9 3.6 3.6 1-1 3.5 2.5 2.7-2.7 2.5.8 3.6-3.5 1-1.1 3.5-3.5-1-2.7 2.5-2.5-2.7-3.6.8-1-3.6-3.5-1 1-3.5L.4 12.9l2.7-2.6-.8-3.6 3.6-.9 1-3.6 3.5 1zM8 8v8h8V8z',
  ),
  signed: svg`${line('M2 20.5h20')}${line('M3 15c3-9 6-13 7.5-11.5S8 15.5 9.5 15.5 13 9 14.5 9.5s-.5 5.5 1 5.5 2-3 6-3')}`,
  scrapped: fill('M2 3h8L8 9l-6 2zM13 2h9v7l-6 1zM2 14l8-3 4 3 3-2 5 1v9h-8l-2-5-3 5H2z'),
  recalled: svg`${line('M9 6.5h6.5a5.5 5.5 0 0 1 0 11H4')}${fill('M10 1.5v10l-8-5z')}`,
  offline: line('M1 12h6M7 6.5v11M17 6.5v11M17 12h6M12 9.5v0M12 4v3M12 17v3'),
  online: svg`${line('M1 12h6M17 12h6')}${fill('M6 6h12v12H6z')}`,
  kept: svg`${line('M2.2 11v9.8h19.6V11')}${fill('M6.5 2h11v15h-11z')}`,
  refused: svg`${line('M5.2 2.2h13.6v19.6H5.2z')}${line('M1.5 20 22.5 4')}`,
  corrected: svg`${fill('M2 5h20v3.2H2zM2 16h14v4.6H2z')}${line('m4 12 16-11')}`,
  overdue: svg`${line('M4 2.5h16M4 21.5h16M6 3c0 5 3.5 7 6 9-2.5 2-6 4-6 9M18 3c0 5-3.5 7-6 9 2.5 2 6 4 6 9')}${fill('M7 20.5c.5-3 3-4 5-5.5 2 1.5 4.5 2.5 5 5.5z')}`,
  due: svg`${line('M4 2.5h16M4 21.5h16M6 3c0 5 3.5 7 6 9-2.5 2-6 4-6 9M18 3c0 5-3.5 7-6 9 2.5 2 6 4 6 9')}${fill('M7.5 6h9c-1 2.5-3 3.7-4.5 5-1.5-1.3-3.5-2.5-4.5-5z')}`,
  caution: svg`${line('M12 3 22 20.8H2z')}${fill('M10.8 9h2.4v6h-2.4zM10.8 16.3h2.4v2.4h-2.4z')}`,
  locked: svg`${fill('M4 10.5h16V22H4zm8 3a1.7 1.7 0 0 0-1 3V19h2v-2.5a1.7 1.7 0 0 0-1-3z')}${line('M7.5 11V7a4.5 4.5 0 0 1 9 0v4')}`,
};
