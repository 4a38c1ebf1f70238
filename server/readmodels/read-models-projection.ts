import type { Projection } from '../journal/sqlite/projection.ts';
import { streamParts } from '../../shared/traveller/index.ts';
import type { ChartSlip, Slip } from '../../shared/traveller/index.ts';
import { takeBoxes } from './box-rows.ts';
import { takeChart } from './chart-rows.ts';
import { isCall, takeCalls } from './call-rows.ts';
import { takeDescent } from './genealogy.ts';
import { mayUseGauge, takeGauge, takeGaugeUse } from './gauge-rows.ts';
import { takeRecords, takeSkip, takeSwitching } from './record-rows.ts';
import { takeStudy } from './study-rows.ts';
import { SubjectRows } from './subject-rows.ts';
import { createTables, readModelVersion } from './tables.ts';
import { typed } from './typed-slip.ts';
import { isUnseen } from './unseen-slips.ts';

/** All lists of the plant, kept up to date in the very transaction that writes the slips. */
export const readModels: Projection = {
  name: 'read models',
  version: readModelVersion,
  create: createTables,
  apply(db, slips) {
    if (slips.every(({ type }) => isUnseen(type) && !mayUseGauge(type))) return;
    const subjects = new SubjectRows(db);
    for (const stored of slips) {
      if (mayUseGauge(stored.type)) takeGaugeUse(db, typed(stored));
      if (isUnseen(stored.type)) continue;
      const slip = typed(stored);
      switch (streamParts(slip.stream)?.kind) {
        case 'lot': case 'batch': case 'furnace': case 'coating':
          takeCalls(db, slip);
          if (isCall(stored.type)) break;
          subjects.take(slip);
          takeBoxes(db, slip);
          takeDescent(db, slip);
          break;
        case 'switching': takeSwitching(db, slip); break;
        case 'gauge': takeGauge(db, slip); break;
        case 'skip': takeSkip(db, slip); break;
        case 'chart': takeChart(db, slip as Slip<ChartSlip>); break;
        case 'study': takeStudy(db, slip); break;
        default: takeRecords(db, slip);
      }
    }
    subjects.write();
  },
};
