import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { streamOf } from '../../../shared/traveller/index.ts';
import type { Command } from '../../../shared/traveller/index.ts';
import { commandExamples } from '../../../shared/wire/command-examples.ts';
import { readCommand } from '../../../shared/wire/read-command.ts';
import { MASTER } from './little-plant.ts';
import { copyOf, STAGES } from './stages.ts';
import { wiseMoves } from './wise-moves.ts';

type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };
type Path = readonly (string | number)[];

/** Values that a field may be given instead of its own: edges of counts and quantities, names that are there and names that are not. */
const ODD: readonly Json[] = [
  null, true, false, 0, 1, 2, 3, -1, 0.5, 12, 300, 999_999, 1_000_000, 1_000_000_000, 1e12, -1e12, 1e-300, 10.0001, 12.7, '', ' ', 'A1', 'A2', 'A3', 'P1', 'F1', 'C1', 'A1-H1', 'A1-001', 'A1-002', 'F1-H1',
  'lot:A1', 'lot:A2', 'lot:', 'lot:nowhere', 'batch:P1', 'furnace:F1', 'coating:C1', 'plan:ROUTE-CNMG', 'person:M-999', 'plant:plant', 'switching:CNMG-D1/final-visual/looks/major', 'unknown:x', '__proto__', 'constructor',
  'MIC-11', 'MIC-12', 'CRA-44', 'HAR-43', 'CNMG-D1', 'TNMG-D2', 'DEMO-F8', 'DEMO-T10', 'DEMO-CVD', 'final-visual', 'pressing', 'sinter-check', 'coating-check', 'dimensions', 'powder-lab', 'powder', 'looks', 'circle', 'hardness', 'porosity', 'weight', 'moisture',
  'CH', 'ST', 'CR', 'A02', 'L26-0000-0000-16', 'X'.repeat(64), [], [1], [1, 1], [9.8, 9.8], ['Top'], {}, { kind: 'clear' }, { kind: 'scrap' }, { kind: 'retest' }, { kind: 'sort' }, { kind: 'reSinter' }, { kind: 'concession', statement: 'as it is' }, { kind: 'regrade', toProduct: 'TNMG-D2' },
  { outerMm: 1.34, innerMm: 0.6 }, { outerMm: 0.6, innerMm: 1.34 }, { outerMm: 1e12, innerMm: 0 }, { sinteredMm: 20.5 }, { sinteredMm: 25 }, { sinteredMm: 1e-300 },
];

function placesOf(value: Json, at: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [at];
  return [...(at.length === 0 ? [] : [at]), ...Object.entries(value).flatMap(([key, inner]) => placesOf(inner as Json, [...at, Array.isArray(value) ? Number(key) : key]))];
}
function withValue(value: Json, path: Path, put: unknown): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return put;
  if (Array.isArray(value)) return value.map((inner: Json, index) => (index === step ? withValue(inner, rest, put) : inner));
  return { ...(value as object), [step]: withValue((value as Record<string, Json>)[step] ?? null, rest, put) };
}

/** The interface's own examples, with the numbers of this little plant, so that they reach past "there is no such lot". */
const HERE: readonly (readonly [there: string, here: string])[] = [
  ['L26-0418', 'A9'], ['L26-0417', 'A1'], ['B26-031', 'P1'], ['F26-031', 'F2'], ['P-100', 'CNMG-D1'], ['M-11', 'MIC-11'], ['W-02', 'BAL-21'], ['GR10', 'DEMO-F8'], ['"thickness"', '"circle"'], ['"final"', '"final-visual"'],
  ['/final/look/', '/final-visual/looks/'], ['"press"', '"pressing"'], ['"look"', '"looks"'], ['"edges"', '"looks"'], ['"chip"', '"CH"'], ['"H1"', '"A1-H1"'], ['P-07', 'I-301'],
];
const EXAMPLES = JSON.parse(HERE.reduce((text, [there, here]) => text.replaceAll(there, here), JSON.stringify(Object.values(commandExamples)))) as readonly Command[];
const change = fc.record({ where: fc.noBias(fc.nat()), what: fc.oneof({ weight: 6, arbitrary: fc.constantFrom<unknown>(...ODD) }, { weight: 1, arbitrary: fc.anything() }, { weight: 2, arbitrary: fc.oneof(fc.integer(), fc.double(), fc.string(), fc.boolean()) }) });
const throwOfMany = fc.record({ pick: fc.noBias(fc.nat()), wise: fc.noBias(fc.nat(3)), a: fc.noBias(fc.nat()), b: fc.noBias(fc.nat()), changes: fc.array(change, { maxLength: 3 }) });

function changed(command: Command, changes: readonly { readonly where: number; readonly what: unknown }[]): unknown {
  return changes.reduce<unknown>((now, { where, what }) => {
    const places = placesOf(now as Json).filter((path) => path.join() !== 'type');
    return withValue(now as Json, places[where % Math.max(1, places.length)] ?? [], what);
  }, command);
}

fc.configureGlobal({ seed: 20261120 });

describe('whatever comes in at the door', () => {
  it('is no command, or is decided with slips or a refusal and never with a fault; a refusal changes nothing', () => {
    const met = { malformed: 0, refused: new Map<string, number>(), taken: new Map<string, number>() };
    fc.assert(fc.property(fc.constantFrom(...STAGES), fc.array(throwOfMany, { minLength: 1, maxLength: 12, size: 'max' }), (stage, throws) => {
      const plant = copyOf(stage.plant);
      for (const { pick, wise, a, b, changes } of throws) {
        const lots = ['A1', 'A2', 'A3'].filter((id) => plant.state(`lot:${id}`) !== null);
        const all = wise > 0 && lots.length > 0 ? wiseMoves(plant, lots, { pick, a, b }) : EXAMPLES;
        const command = all[pick % all.length];
        if (command === undefined) continue;
        const read = readCommand({ clientId: 'garbage-0001', bench: 'Bench', command: changed(command, changes) });
        if (!read.ok) {
          expect(read.problems.length).toBeGreaterThan(0);
          met.malformed += 1;
          continue;
        }
        const asked = read.envelope.command;
        const [before, slips] = [plant.states, plant.slips.length];
        const snapshot = new Map(before);
        // A throw of decide fails the property; states are frozen, so that writing into them throws too.
        const decision = plant.give(asked, MASTER, { signed: b % 8 !== 0 });
        expect('slips' in decision !== 'refusal' in decision).toBe(true);
        if ('refusal' in decision) {
          expect([plant.slips.length, [...plant.states]]).toEqual([slips, [...snapshot]]);
          met.refused.set(decision.refusal.code, (met.refused.get(decision.refusal.code) ?? 0) + 1);
        } else {
          expect(decision.slips.length).toBeGreaterThan(0);
          expect(decision.slips[0]?.stream).toBe(streamOf(asked));
          met.taken.set(asked.type, (met.taken.get(asked.type) ?? 0) + 1);
        }
      }
    }), { numRuns: 1500 });
    // The statement is about something: much was malformed, refused for many reasons, and taken.
    expect(met.malformed).toBeGreaterThan(500);
    expect(met.refused.size).toBeGreaterThan(25);
    expect(met.taken.size).toBeGreaterThan(20);
  });

  it('anything at all is no command, and nothing is thrown about it', () => {
    fc.assert(fc.property(fc.anything({ withBigInt: true, withDate: true, withMap: true, withSet: true, withNullPrototype: true, withObjectString: true, withSparseArray: true, withTypedArray: true }), (input) => {
      for (const each of [input, { clientId: 'garbage-0001', bench: 'Bench', command: input }]) expect(readCommand(each).ok).toBe(false);
    }), { numRuns: 3000 });
  });
});
