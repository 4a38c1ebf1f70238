import { createPrivateKey, createPublicKey } from 'node:crypto';
import type { CertificateContent, CertificateGate } from '../../../shared/wire/certificate-data.ts';

// A key for tests only, from 32 fixed bytes in the PKCS#8 frame of RFC 8410.
const seed = Buffer.from('302e020100300506032b657004220420'.concat('1f'.repeat(32)), 'hex');
export const plantKey = createPrivateKey({ key: seed, format: 'der', type: 'pkcs8' });
export const plantPublicKey = createPublicKey(plantKey);

const lab = { name: 'Ilka Brandner', badge: '2107' };
const press = { name: 'Tomáš Říha', badge: '3312' };
const gauge = { name: 'Marisol Peña', badge: '3348' };
const visual = { name: 'Günter Weiß', badge: '3401' };
const quality = { name: 'Anselm Thorvik', badge: '1004' };

const lot = { kind: 'insertLot', number: 'L26-004217' } as const;
const batch = { kind: 'powderBatch', number: 'P26-0311' } as const;
const furnace = { kind: 'furnaceCharge', number: 'F26-0892' } as const;
const coating = { kind: 'coatingCharge', number: 'K26-0440' } as const;

const gates: readonly CertificateGate[] = [
  { gate: 'Powder lab release', workedOn: batch, characteristic: 'Coercivity of the sintered test piece', method: 'Coercivity, ISO 3326', plan: 'Fixed sample, 3 readings', n: 3, result: { judgedBy: 'limits', symbol: 'mean', value: 16.42, lower: 15.5, upper: 17.5, unit: 'kA/m', decimals: 2 }, verdict: 'accepted', by: lab, at: '2026-10-28T08:12:00+01:00', isReinspection: false },
  { gate: 'Pressing', workedOn: lot, characteristic: 'Weight of the pressed piece', method: 'Scale, 1 mg', plan: 'ISO 3951-1 s-method, level II, letter G, normal, AQL 0.65', n: 15, result: { judgedBy: 'statistic', symbol: 'Q', value: 2.874, relation: '≥', limit: 2.061, decimals: 3 }, verdict: 'accepted', by: press, at: '2026-10-30T14:41:00+01:00', isReinspection: false },
  { gate: 'Pressing', workedOn: lot, characteristic: 'Look under the lens', method: '8 to 10 ×', plan: '4 looks at intervals, none found', n: 20, result: { judgedBy: 'none', found: 0 }, verdict: 'accepted', by: press, at: '2026-10-30T14:41:00+01:00', isReinspection: false },
  { gate: 'Furnace charge', workedOn: furnace, characteristic: 'Density', method: 'Weighing in air and water, ISO 3369', plan: 'Test pieces of the charge', n: 5, result: { judgedBy: 'limits', symbol: 'mean', value: 13.952, lower: 13.9, upper: 14.05, unit: 'g/cm³', decimals: 3 }, verdict: 'accepted', by: lab, at: '2026-11-03T11:20:00+01:00', isReinspection: false },
  { gate: 'Furnace charge', workedOn: furnace, characteristic: 'Hardness HV30', method: 'Vickers, ISO 3878', plan: 'Test pieces of the charge', n: 5, result: { judgedBy: 'limits', symbol: 'mean', value: 1547, lower: 1500, upper: 1600, unit: 'HV30', decimals: 0 }, verdict: 'accepted', by: lab, at: '2026-11-03T11:20:00+01:00', isReinspection: false },
  { gate: 'Furnace charge', workedOn: furnace, characteristic: 'Porosity and free carbon', method: 'Metallography, ISO 4499-4', plan: 'Test pieces of the charge', n: 1, result: { judgedBy: 'grade', grade: 'A02 B00 C00', limit: 'A04 B02 C00' }, verdict: 'accepted', by: lab, at: '2026-11-03T11:20:00+01:00', isReinspection: false },
  { gate: 'Ground dimensions', workedOn: lot, characteristic: 'Inscribed circle', method: 'Comparator, 1 µm', plan: 'ISO 3951-1 s-method, level II, letter J, normal, AQL 1.0', n: 35, result: { judgedBy: 'statistic', symbol: 'Q', value: 2.113, relation: '≥', limit: 1.882, decimals: 3 }, verdict: 'accepted', by: gauge, at: '2026-11-09T13:02:00+01:00', isReinspection: false },
  { gate: 'Edge', workedOn: lot, characteristic: 'Edge radius', method: 'Contour measuring', plan: 'each of 5 within the limits', n: 5, result: { judgedBy: 'each', outside: 0, lower: 30, upper: 50, unit: 'µm', decimals: 1 }, verdict: 'accepted', by: gauge, at: '2026-11-10T07:44:00+01:00', isReinspection: false },
  { gate: 'Coating charge', workedOn: coating, characteristic: 'Thickness from crater diameters', method: 'Ball crater, ISO 26423', plan: 'Witness pieces of the charge', n: 4, result: { judgedBy: 'limits', symbol: 'mean', value: 7.4, lower: 6, upper: 9, unit: 'µm', decimals: 1 }, verdict: 'accepted', by: lab, at: '2026-11-12T15:17:00+01:00', isReinspection: false },
  { gate: 'Final visual', workedOn: lot, characteristic: 'Major: chipped or cracked edge', method: 'Eye, 10× lens', plan: 'ISO 2859-1, level II, letter J, normal, AQL 1.0', n: 80, result: { judgedBy: 'found', found: 4, acceptance: 2, rejection: 3 }, verdict: 'rejected', by: visual, at: '2026-11-16T10:21:00+01:00', isReinspection: false },
  { gate: 'Final visual', workedOn: lot, characteristic: 'Major: chipped or cracked edge', method: 'Eye, 10× lens', plan: 'ISO 2859-1, level II, letter J, normal, AQL 1.0', n: 80, result: { judgedBy: 'found', found: 0, acceptance: 2, rejection: 3 }, verdict: 'accepted', by: visual, at: '2026-11-17T09:48:00+01:00', isReinspection: true },
  { gate: 'Final visual', workedOn: lot, characteristic: 'Minor: discoloured coating', method: 'Eye', plan: 'ISO 2859-1, level II, letter J, normal, AQL 4.0', n: 80, result: { judgedBy: 'found', found: 9, acceptance: 7, rejection: 8 }, verdict: 'acceptedOnConcession', by: visual, at: '2026-11-17T09:48:00+01:00', isReinspection: true },
  { gate: 'Marking check', workedOn: lot, characteristic: 'Mark on the piece as ordered', method: 'Eye', plan: 'Fixed sample, 5 pieces', n: 5, result: { judgedBy: 'confirmed' }, verdict: 'accepted', by: visual, at: '2026-11-17T13:30:00+01:00', isReinspection: false },
];

/** An invented lot with everything a certificate can hold: a rejection and its re-inspection, a concession, a correction. */
export const sampleContent: CertificateContent = {
  form: 'gatehand-certificate-1', language: 'en', demo: true,
  plant: { name: 'Haldenau Carbide Works', address: 'Am Schieferhang 4, Haldenau (an invented place)' },
  certificate: { number: 'C26-000417', issuedOn: '2026-11-18', documentType: '3.1' },
  purchaser: { name: 'Nordhafen Turning Shop', order: 'NT-88123', orderLine: '30' },
  product: { designation: 'CNMG 120408-M7', grade: 'DEMO-7', coating: 'Ti(C,N) + Al₂O₃', specification: 'PS-0417, edition 5', marking: 'DEMO-7 M7' },
  lot: { number: 'L26-004217', quantity: 1180, powderBatches: ['P26-0311'], furnaceCharges: ['F26-0892'], coatingCharges: ['K26-0440'] },
  gates: [...gates],
  measured: [
    { name: 'Coercivity', workedOn: batch, unit: 'kA/m', n: 3, mean: 16.423, s: 0.087, min: 16.34, max: 16.51, lower: 15.5, upper: 17.5, decimals: 2, decisionRule: 'Simple acceptance', uncertainty: 0.21 },
    { name: 'Density', workedOn: furnace, unit: 'g/cm³', n: 5, mean: 13.9522, s: 0.0061, min: 13.945, max: 13.961, lower: 13.9, upper: 14.05, decimals: 3, decisionRule: 'Guard band g = U', uncertainty: 0.012 },
    { name: 'Hardness HV30', workedOn: furnace, unit: 'HV30', n: 5, mean: 1547.2, s: 7.9, min: 1536, max: 1558, lower: 1500, upper: 1600, decimals: 0, decisionRule: 'Guard band g = U', uncertainty: 24 },
    { name: 'Coating thickness', workedOn: coating, unit: 'µm', n: 4, mean: 7.43, s: 0.24, min: 7.1, max: 7.6, lower: 6, upper: null, decimals: 1, decisionRule: 'Simple acceptance', uncertainty: 0.35 },
    { name: 'Weight of the pressed piece', workedOn: lot, unit: 'g', n: 15, mean: 9.8141, s: 0.0132, min: 9.789, max: 9.835, lower: 9.77, upper: 9.86, decimals: 3, decisionRule: 'Simple acceptance', uncertainty: 0.0021 },
    { name: 'Inscribed circle', workedOn: lot, unit: 'mm', n: 35, mean: 12.7034, s: 0.0081, min: 12.688, max: 12.721, lower: 12.65, upper: 12.75, decimals: 3, decisionRule: 'Guard band g = U', uncertainty: 0.0024 },
    { name: 'Edge radius', workedOn: lot, unit: 'µm', n: 5, mean: 41.24, s: 2.71, min: 37.9, max: 44.8, lower: 30, upper: 50, decimals: 1, decisionRule: 'Simple acceptance', uncertainty: 1.9 },
  ],
  concessions: [{
    text: 'Discoloured coating on the relief face, up to 0.3 mm from the edge, on at most 15 of 80 pieces. No effect on the cutting edge; the purchaser has agreed in writing for this lot only.',
    quantity: 1180, by: quality, at: '2026-11-17T11:05:00+01:00',
  }],
  corrections: [{ what: 'Edge, piece 3, radius', was: '448 µm', is: '44.8 µm', reason: 'Decimal sign slipped, gauge record read again', by: gauge, at: '2026-11-10T07:51:00+01:00' }],
  notes: ['Three sampling cells for reduced inspection have not yet been compared with the standard’s own text; none of them was used for this lot.'],
  signatures: [{ ...quality, role: 'Quality engineer', meaning: 'Concession reviewed', at: '2026-11-17T11:05:00+01:00' }, { name: 'Rosalind Achterberg', badge: '1001', role: 'Authorised releaser', meaning: 'Released for shipment; independent of manufacturing', at: '2026-11-18T08:02:00+01:00' }],
};
