/** What the desk of the gauges says. */
export const gaugesDeskWords = {
  title: 'Gauges',
  parts: { register: 'Register', recall: 'Recall', studies: 'Studies' },
  partsLabel: 'Parts of the gauges’ desk',
  register: {
    caption: 'Gauges', empty: 'No gauge is registered. Readings that need one cannot be taken yet.',
    columns: { id: 'Gauge', name: 'Name', kind: 'Kind', range: 'Range', resolution: 'Resolution', uncertainty: 'U (k = 2)', due: 'Calibration due', standing: 'Standing', bench: 'Bench' },
    standings: { fit: 'fit', dueSoon: 'due soon', overdue: 'overdue', withdrawn: 'withdrawn', outOfTolerance: 'out of tolerance' },
    overdueNote: (count: number, shown: string) => (count === 1 ? 'One gauge is overdue. Its readings do not count until it is calibrated.' : `${shown} gauges are overdue. Their readings do not count until they are calibrated.`),
    range: (least: string, most: string, unit: string) => `${least} … ${most} ${unit}`,
    withUnit: (value: string, unit: string) => `${value} ${unit}`,
    registerOne: 'Register a gauge', back: 'All gauges',
    calibrateTitle: 'Enter a calibration', withdrawTitle: 'Take out of use',
    fields: { id: 'Number', name: 'Name', gaugeKind: 'Kind', unit: 'Unit', resolution: 'Resolution', expandedUncertainty: 'Expanded uncertainty U, k = 2', least: 'Reads from', most: 'Reads to', calibrationDue: 'Last day before calibration', bench: 'Bench (may stay empty)', certificate: 'Calibration certificate' },
    kindHint: 'The word the plans ask for, for example micrometer.',
    save: 'Register it', calibrate: 'Enter it', withdraw: 'Take it out of use',
    missing: 'Needed.', noNumber: 'This is no number.', notPositive: 'More than 0, please.', rangeEmpty: 'The end lies above the beginning.', reasonMissing: 'Say why.',
    registered: (id: string) => `Gauge ${id} is registered.`, calibrated: (id: string) => `The calibration of ${id} is entered.`, withdrawnDone: (id: string) => `Gauge ${id} is out of use.`,
    withdrawnWhy: (reason: string) => `Out of use: ${reason}`,
    unknown: (id: string) => ({ happened: `There is no gauge ${id}.`, next: 'Choose one from the list.' }),
  },
};
export type GaugesDeskWords = typeof gaugesDeskWords;
