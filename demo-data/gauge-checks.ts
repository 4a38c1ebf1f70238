import type { Floor } from './floor.ts';
import { PEOPLE } from './people.ts';

/** Masters of the invented plant: gauge, master, its true value, what the gauge shows week by week, allowed error. All invented. */
const MASTERS = [
  { gauge: 'MIC-11', master: 'Block 12.5 mm (invented)', nominal: 12.5, found: [12.5, 12.501, 12.5, 12.499, 12.501, 12.5], allowedError: 0.002 },
  { gauge: 'BAL-21', master: 'Weight 10 g (invented)', nominal: 10, found: [10, 10, 10.001, 10, 9.999, 10], allowedError: 0.002 },
  { gauge: 'HAR-43', master: 'Block 1550 HV30 (invented)', nominal: 1550, found: [1556, 1549, 1561], allowedError: 30 },
] as const;

/** The checks of one week, and in the fifth the hardness tester's calibration, which finds it bad as it was: its recall stands open when the story ends. */
export function checkGauges(floor: Floor, week: number): void {
  const lab = PEOPLE.find(({ badge }) => badge === 'L-201');
  if (lab === undefined) throw new Error('the story needs somebody in the lab');
  for (const { gauge, master, nominal, found, allowedError } of MASTERS) {
    const shown = found[week];
    if (shown !== undefined) floor.give(lab, 'Lab', { type: 'checkGauge', gauge, master, nominal, found: shown, allowedError });
  }
  if (week !== 4) return;
  const calibrated = { type: 'calibrateGauge', gauge: 'HAR-43', calibrationDue: new Date(Date.parse(floor.now) + 365 * 86_400_000).toISOString().slice(0, 10), expandedUncertainty: 25 } as const;
  floor.give(lab, 'Lab', { ...calibrated, certificate: 'K-26-0431 as found (invented)', asFound: { error: 41, allowedError: 30 } });
  floor.wait(30);
  floor.give(lab, 'Lab', { ...calibrated, certificate: 'K-26-0431 (invented)', asFound: { error: 6, allowedError: 30 } });
}
