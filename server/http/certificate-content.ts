import type { Batch, Charge, Concession, Lot, PlantCard, Release, Subject } from '../../shared/traveller/index.ts';
import type { CertificateContent } from '../../shared/wire/certificate-data.ts';
import { certificateEntryWords as said } from '../../shared/words/certificate-entries.en.ts';
import { words } from '../../shared/words/index.ts';
import { decisionNotes } from './decision-notes.ts';
import { clip, gateRows, measuredRows, personOf, tableNotesOf, variablesNotes, type Names } from './certificate-rows.ts';
import { chargeNotes } from './charge-notes.ts';

/** What a certificate is made from: the lot, everything upstream whose verdict stands on it, and the plant's own words. */
export interface CertificateSources {
  readonly lot: Lot;
  readonly release: Release;
  /** The lots it was split from, the nearest first. */
  readonly parents: readonly Lot[];
  readonly batch: Batch;
  /** Every charge the lot was in, the earliest first; one it was taken out of again stays in sight. */
  readonly charges: readonly Charge[];
  readonly coating: string | null;
  readonly plant: PlantCard;
  readonly names: Names;
}

const most = { gates: 120, measured: 120, concessions: 20, corrections: 60, cautions: 12, decisions: 16 } as const;
const { labels } = words('en');

/** Everything the certificate of a released lot states. The same sources make the same content. */
export function certificateContent({ lot, release, parents, batch, charges, coating, plant, names }: CertificateSources): CertificateContent {
  const subjects: readonly Subject[] = [batch, ...charges, lot];
  const cameAgain = new Set(lot.charges.flatMap(({ charge, again }) => (again === null ? [] : [charge])));
  // A charge may hold lots that come for the first time beside one that comes again: for this lot it is a re-inspection.
  const gates = subjects.flatMap((subject) => gateRows(subject, names).map((row) => (cameAgain.has(subject.stream) ? { ...row, isReinspection: true } : row)));
  const measured = subjects.flatMap(measuredRows);
  // A concession on the powder stands on its thread and on the lot's; it is one decision and is told once.
  const concessions = distinct([batch, ...parents, lot].flatMap((subject) => subject.concessions).map((concession) => concessionRow(concession, release.quantity)));
  const corrections = [batch, ...charges, ...parents, lot].flatMap((subject) => correctionRows(subject, names));
  const cautions = [...chargeNotes(lot, charges), ...subjects.flatMap(variablesNotes)];
  const decisions = subjects.flatMap(decisionNotes).map((note) => clip(note, 600));
  const beyond = [gates.length - most.gates, measured.length - most.measured, concessions.length - most.concessions, corrections.length - most.corrections, cautions.length - most.cautions, decisions.length - most.decisions].filter((rows) => rows > 0);
  const charged = (kind: Charge['kind']): string[] => lot.charges.flatMap(({ charge, current }) => charges.filter((each) => current && each.stream === charge && each.kind === kind).map(({ id }) => id));
  return {
    form: 'gatehand-certificate-1', language: 'en', demo: lot.demo, plant: { name: clip(plant.name, 80), address: clip(plant.address, 160) },
    certificate: { number: release.certificate, issuedOn: release.at.slice(0, 10), documentType: '3.1' }, purchaser: lot.order === null ? null : { name: null, order: clip(lot.order, 60), orderLine: null },
    product: { designation: clip(lot.product.designation, 60), grade: clip(batch.grade.name, 60), coating: coating === null ? null : clip(coating, 60), specification: clip(said.specification(lot.plan, lot.planVersion), 100), marking: clip(lot.product.marking, 100) },
    lot: { number: lot.id, quantity: release.quantity, powderBatches: [batch.id, ...batch.blendedFrom.map((part) => part.batch)].slice(0, 20), furnaceCharges: charged('furnace').slice(0, 20), coatingCharges: charged('coating').slice(0, 20) },
    gates: gates.slice(0, most.gates), measured: measured.slice(0, most.measured), concessions: concessions.slice(0, most.concessions), corrections: corrections.slice(0, most.corrections),
    notes: [...blendNotes(batch), ...new Set(subjects.flatMap(tableNotesOf).map((note) => labels.tableNotes[note])), ...decisions.slice(0, most.decisions), ...cautions.slice(0, most.cautions), ...beyond.map(said.furtherEntries)],
    signatures: release.signatures.map(({ badge, name, role, meaning, at }) => ({ name: clip(name, 80), badge: clip(badge, 20), role: labels.roles[role], meaning: labels.signatureMeanings[meaning], at })),
  };
}

/** Says of a blend what it was blended of, so that no heat number goes unnamed. */
function blendNotes({ id, blendedFrom }: Batch): readonly string[] {
  return blendedFrom.length === 0 ? [] : [clip(said.blendOf(id, blendedFrom.map(({ batch }) => batch)), 600)];
}

function distinct<Row>(rows: readonly Row[]): readonly Row[] {
  return [...new Map(rows.map((row) => [JSON.stringify(row), row])).values()];
}

function concessionRow({ statement, signature }: Concession, quantity: number): CertificateContent['concessions'][number] {
  const text = statement.replaceAll(/[^\S\n]+/g, ' ').replaceAll(/[\p{Cc}\p{Cs}]/gu, (sign) => (sign === '\n' ? sign : '')).trim();
  return { text: text.length <= 800 ? text : `${text.slice(0, 799)}…`, quantity, by: { name: clip(signature.name, 80), badge: clip(signature.badge, 20) }, at: signature.at };
}

function correctionRows(subject: Subject, names: Names): CertificateContent['corrections'] {
  return subject.corrections.map(({ gate, characteristic, ordinal, from, to, reason, at, by }) => {
    const record = subject.gates.find(({ id }) => id === gate);
    const name = record?.plan?.characteristics.find(({ id }) => id === characteristic)?.name ?? characteristic;
    return { what: clip(said.corrected(record?.name ?? gate, name, ordinal), 120), was: clip(from, 60), is: clip(to === '' ? said.withdrawn : to, 60), reason: clip(reason, 200), by: personOf(by, names), at };
  });
}
