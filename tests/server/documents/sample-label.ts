import type { BoxLabelData } from '../../../server/documents/label/index.ts';

/** An invented box of an invented plant. */
export const sampleLabel: BoxLabelData = {
  plant: 'Haldenau Carbide Works', designation: 'CNMG 120408-M7', item: 'CNMG120408-M7', grade: 'DEMO-7', coating: 'Ti(C,N) + Al₂O₃', quantity: 10,
  lot: 'L26-004217', boxSerial: 'B26004217-013', packedOn: '2026-11-18', certificateNumber: 'C26-000417', country: 'PT', reprint: 0, demo: true,
};
