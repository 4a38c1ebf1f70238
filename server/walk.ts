import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Slip } from '../shared/traveller/index.ts';
import type { StampedSlip } from '../shared/wire/stamped-slip.ts';
import { words } from '../shared/words/index.ts';
import { KEEPER, PEOPLE } from '../demo-data/people.ts';
import { startServer } from './start-server.ts';
import { compareCertificate } from './walk/compare-certificate.ts';
import { BATCH, COATING, FURNACE, INSPECTOR, LOT, lotOf, openPlant, packAndShip, walkToRelease } from './walk/one-lot.ts';
import { PlantClient } from './walk/plant-client.ts';
import { readCertificate } from './walk/read-certificate.ts';
import { readDataMatrix } from './walk/read-code.ts';

const output = resolve(process.argv[2] ?? 'walk-output');
const names = Object.fromEntries([KEEPER, ...PEOPLE].map(({ badge, name }) => [badge, name]));
const speak = words('en');

/** Prints each slip as the sentence people read at the kiosk. */
function tell(slips: readonly StampedSlip[]): void {
  for (const slip of slips) console.log(`${slip.at.slice(11, 19)}  ${slip.stream.padEnd(14)} ${speak.slipSentence(slip, { names })}`);
}

async function walk(folder: string): Promise<readonly string[]> {
  const server = await startServer({ folder, port: 0, host: '127.0.0.1', quiet: true });
  try {
    const plant = new PlantClient(server.url, tell);
    console.log('An invented plant is opened. One lot goes from the powder lab to the shipped box, over the public HTTP door.\n');
    await openPlant(plant);
    await walkToRelease(plant);
    mkdirSync(output, { recursive: true });
    const certificate = await plant.bytes(INSPECTOR, `/api/lots/${LOT}/certificate.pdf`);
    writeFileSync(join(output, 'certificate.pdf'), certificate);
    const differences: string[] = [];
    const boxes = await packAndShip(plant, async (serial, png) => {
      if (serial.endsWith('-001')) writeFileSync(join(output, 'label.png'), png);
      const read = await readDataMatrix(png);
      const stands = (await lotOf(plant)).boxes.find((box) => box.serial === serial);
      if (read !== stands?.payload) differences.push(`label of ${serial}: the decoder reads ${JSON.stringify(read)}, the journal has ${JSON.stringify(stands?.payload)}`);
      return read;
    });
    const thread = async (kind: string, id: string): Promise<readonly Slip[]> => (await plant.json<{ slips: readonly StampedSlip[] }>(INSPECTOR, `/api/travellers/${kind}/${id}?tail=100000`)).slips;
    const threads = await Promise.all([thread('lot', LOT), thread('batch', BATCH), thread('furnace', FURNACE), thread('coating', COATING)]);
    writeFileSync(join(output, 'traveller.json'), await plant.bytes(INSPECTOR, `/api/travellers/lot/${LOT}/traveller.json`));
    const lot = await lotOf(plant);
    const read = await readCertificate(certificate);
    differences.push(...compareCertificate(read, threads, [
      { what: 'lot', value: LOT }, { what: 'powder batch', value: BATCH }, { what: 'furnace charge', value: FURNACE }, { what: 'coating charge', value: COATING },
      { what: 'certificate number', value: lot.release?.certificate ?? '(none)' }, { what: 'designation', value: lot.product.designation }, { what: 'quantity', value: `${lot.release?.quantity ?? 0}` },
      { what: 'concession', value: lot.concessions[0]?.statement ?? '(none)' }, { what: 'signature', value: names['R-501'] ?? '' },
    ]));
    const verified = await plant.json<{ firstBroken: unknown }>(KEEPER, '/api/journal/verify');
    if (verified.firstBroken !== null) differences.push(`the journal is broken at ${JSON.stringify(verified.firstBroken)}`);
    console.log(`\n${boxes.length} boxes shipped; certificate of ${read.pages} pages, ${read.rows.length} table rows and ${boxes.length} labels compared with the journal.`);
    return differences;
  } finally {
    await server.close();
  }
}

const folder = mkdtempSync(join(tmpdir(), 'gatehand-walk-'));
try {
  const differences = await walk(folder);
  for (const difference of differences) console.error(`DIFFERENT  ${difference}`);
  console.log(differences.length === 0 ? `Everything agrees. See ${join(output, 'certificate.pdf')}, label.png and traveller.json.` : `${differences.length} differences.`);
  process.exitCode = differences.length === 0 ? 0 : 1;
} finally {
  rmSync(folder, { recursive: true, force: true });
}
