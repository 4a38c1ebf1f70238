import { onTestFinished } from 'vitest';
import type { Answered } from '../http-caller.ts';
import { FixturePlant } from '../fixture-plant.ts';
import type { ServerOptions } from '../../../server/start-server.ts';
import type { Lot } from '../../../shared/traveller/index.ts';

/** An invented plant with one press, its balance, and a lot open at the gate where every piece is weighed. */
export class PressPlant {
  readonly plant: FixturePlant;
  token = '';

  private constructor(plant: FixturePlant) {
    this.plant = plant;
  }

  static async open(options: Partial<ServerOptions> = {}, interval: { readonly everyPieces: number; readonly everyMinutes?: number; readonly graceMinutes?: number } = { everyPieces: 500 }): Promise<PressPlant> {
    const plant = await FixturePlant.open({ lookEveryMs: 30, ...options });
    const today = options.now?.() ?? new Date();
    await plant.give('keeper', { type: 'registerGauge', gauge: { id: 'BAL-1', name: 'Invented balance', gaugeKind: 'balance', unit: 'g', resolution: 0.001, expandedUncertainty: 0.001, least: 0, most: 50, calibrationDue: new Date(today.getTime() + 30 * 86_400_000).toISOString().slice(0, 10), bench: 'Press 1' } });
    await plant.give('engineer', { type: 'draftPlan', why: 'pressing', plan: { id: 'PRESSED', name: 'Pressed', appliesTo: 'lot', gates: [
      { id: 'powder', name: 'Powder', workedOn: 'batch', bench: 'Lab', roles: ['lab'], cautions: [], characteristics: [] },
      { id: 'pressing', name: 'Pressing', workedOn: 'lot', bench: 'Press 1', roles: ['inspector'], cautions: [], characteristics: [
        { kind: 'measured', id: 'weight', name: 'Weight', method: 'balance', destructive: false, unit: 'g', decimals: 3, lower: 9.95, upper: 10.05, target: 10, plausible: { least: 1, most: 50 }, gaugeKind: 'balance', decisionRule: 'simple', entry: { how: 'direct' }, factor: null, pressTolerancePercent: null, sampling: { rule: 'everyPiece', ejectAtMostPercent: 2 } },
        { kind: 'counted', id: 'looks', name: 'Look', method: 'lens', destructive: false, kinds: [{ code: 'PC', name: 'Crack', class: 'critical' }], sampling: { rule: 'interval', n: 5, ...interval } },
      ] },
    ] } });
    for (const by of ['engineer', 'otherEngineer'] as const) await plant.give(by, { type: 'approvePlan', plan: 'PRESSED', planVersion: 1 }, { signed: true });
    await plant.give('engineer', { type: 'defineProduct', product: { id: 'PR2', designation: 'CNMA 12 04 08', name: 'Invented insert', itemCode: 'CNMA120408-P2', grade: 'G1', layer: null, marking: 'P2', piecesPerBox: 100, plan: 'PRESSED', sinteredVolumeMm3: 600, thicknessMm: 4.76 } });
    await plant.give('lab', { type: 'openBatch', batch: 'B-1', grade: 'G1', barrels: 3, kgPerBarrel: 500, rawLots: [{ rawLot: 'RAW-1', material: 'Invented carbide', kg: 1500 }] });
    const powder = { subject: 'batch:B-1', gate: 'powder' };
    await plant.give('lab', { type: 'openGate', ...powder });
    for (const [characteristic, value] of [['shrinkage', 18], ['density', 14.5], ['binder', 2]] as const) await plant.give('lab', { type: 'takeReading', ...powder, characteristic, ordinal: 1, value });
    await plant.give('lab', { type: 'releaseBatch', batch: 'B-1' }, { signed: true });
    const pressed = new PressPlant(plant);
    await pressed.lot('A1', 5000);
    await plant.give('engineer', { type: 'registerPress', press: { id: 'PR-1', name: 'Press 1', bench: 'Press 1', balance: 'BAL-1' } });
    await plant.give('inspector', { type: 'setPress', press: 'PR-1', lot: 'A1' });
    pressed.token = ((await (await plant.as('keeper')).post('/api/presses/PR-1/token', {})).body as { token: string }).token;
    return pressed;
  }

  async lot(id: string, quantity: number): Promise<void> {
    await this.plant.give('inspector', { type: 'openLot', lot: id, product: 'PR2', batch: 'B-1', quantity, trayCapacity: 50 });
    await this.plant.give('inspector', { type: 'openGate', subject: `lot:${id}`, gate: 'pressing' });
  }

  /** Sends a batch over HTTP as the press's balance. */
  async send(batch: { readonly fromSeq: number; readonly values: readonly number[]; readonly lost?: boolean; readonly now?: boolean }, token = this.token): Promise<Answered> {
    const response = await fetch(`${this.plant.server.url}/api/presses/PR-1/weights`, { method: 'POST', headers: { 'content-type': 'application/json', authorization: `Bearer ${token}` }, body: JSON.stringify(batch) });
    return { status: response.status, body: await response.json(), headers: response.headers };
  }

  async lotState(id = 'A1'): Promise<Lot> {
    const { state } = await this.plant.server.door.states.fresh(`lot:${id}`);
    if (state?.kind !== 'lot') throw new Error(`no lot ${id}`);
    return state;
  }
  async weighed(id = 'A1'): Promise<number> {
    return (await this.lotState(id)).gates.find((gate) => gate.id === 'pressing')?.work[0]?.weights?.running.n ?? 0;
  }
}

/** Weights by turns above and below the target. */
export const steady = (count: number): number[] => Array.from({ length: count }, (_, at) => (at % 2 === 0 ? 10.004 : 9.996));

/** Opens such a plant and closes it when the test is over. */
export async function pressPlant(...how: Parameters<typeof PressPlant.open>): Promise<PressPlant> {
  const press = await PressPlant.open(...how);
  onTestFinished(() => press.plant.close());
  return press;
}
