import { singlePlan } from '../../sampling/attributes/index.ts';
import { drawSample } from '../../sampling/draw/index.ts';
import { drawInStages } from './draw-in-stages.ts';
import { SMALLEST_VARIABLES_LOT } from '../../sampling/variables/index.ts';
import type { Subject } from '../known.ts';
import type { Pen } from '../pen.ts';
import { refuse } from '../pen.ts';
import type { AttributesRule, Characteristic, Measured } from '../plan/characteristic.ts';
import { FINDING_CLASSES } from '../plan/characteristic.ts';
import type { SwitchingSeverity } from '../switching-state/slips.ts';
import { variablesPlanFor } from '../plan/variables-plan-for.ts';
import { switchingStream } from '../stream.ts';
import type { ClassPlan, Demand, Place } from './demand.ts';

/** Severity in force; a state that never began is normal (ISO 2859-1, start of inspection; from memory). Discontinued stops an original inspection. */
function severityOf(pen: Pen, stream: string, original: boolean): Exclude<SwitchingSeverity, 'discontinued'> {
  const state = pen.state(stream);
  if (state === null || state.kind !== 'switching') return 'normal';
  const { severity } = state.state;
  if (severity !== 'discontinued') return severity;
  if (original) refuse({ code: 'inspectionDiscontinued', switching: stream, lots: state.state.enteredBy?.lots ?? [] });
  return 'tightened';
}

/** What the opened gate asks of one characteristic: n, the plan in force, and which pieces. */
export function stateDemand(pen: Pen, subject: Subject, gate: string, planned: Characteristic, lotSize: number, original: boolean, seed: string): Demand {
  const characteristic = withPressLimits(subject, planned);
  const { sampling } = characteristic;
  const product = subject.kind === 'lot' ? subject.product.id : subject.id;
  switch (sampling.rule) {
    case 'attributes': {
      const classes = classPlans(pen, product, gate, characteristic.id, sampling, lotSize, original);
      const sizes = classes.map(({ plan }) => plan.sampleSize);
      return { characteristic, basis: { by: 'attributes', classes }, n: Math.max(...sizes), places: drawn(subject, lotSize, sizes, seed) };
    }
    case 'limitingQuality': case 'zeroAcceptance': case 'twoPoint': case 'sequential': return refuse({ code: 'planUnsound', where: characteristic.name, why: 'noAql' });
    case 'variables': {
      // The tables of variables plans begin at three pieces; a smaller lot is measured whole, each piece within the limits.
      if (lotSize < SMALLEST_VARIABLES_LOT) return { characteristic, basis: { by: 'limits', accept: 'each' }, n: lotSize, places: drawn(subject, lotSize, [lotSize], seed) };
      const switching = sampling.points === undefined ? switchingStream(product, gate, characteristic.id, null) : null;
      const plan = variablesPlanFor(sampling, lotSize, switching === null ? 'normal' : severityOf(pen, switching, original)) ?? refuse({ code: 'planUnsound', where: characteristic.name, why: 'noDesign' });
      return { characteristic, basis: { by: 'variables', plan, switching }, n: plan.sampleSize, places: drawn(subject, lotSize, [plan.sampleSize], seed) };
    }
    case 'fixed': {
      // Powder is tested as often as planned, however few its barrels; pieces only as many as there are.
      const n = subject.kind === 'batch' ? sampling.n : Math.min(sampling.n, lotSize);
      return { characteristic, basis: limitsBasis(characteristic, sampling.accept), n, places: drawn(subject, lotSize, [n], seed) };
    }
    case 'barrels': {
      const barrels = drawSample({ seed, population: lotSize, size: Math.min(sampling.barrels, lotSize) });
      const places: Place[] = barrels.flatMap((barrel) => Array.from({ length: sampling.each }, (_, index) => ({ at: 'barrel' as const, barrel, nth: index + 1 })));
      return { characteristic, basis: limitsBasis(characteristic, sampling.accept), n: places.length, places };
    }
    case 'positions': {
      const places: Place[] = sampling.positions.flatMap((position) => Array.from({ length: sampling.each }, (_, index) => ({ at: 'position' as const, position, nth: index + 1 })));
      return { characteristic, basis: limitsBasis(characteristic, sampling.accept), n: places.length, places };
    }
    case 'everyPiece': return { characteristic, basis: { by: 'everyPiece' }, n: lotSize, places: [] };
    case 'interval': return { characteristic, basis: { by: 'interval', everyPieces: sampling.everyPieces, looks: Math.max(1, Math.floor(lotSize / sampling.everyPieces)) }, n: sampling.n, places: [] };
    case 'once': return { characteristic, basis: { by: 'once' }, n: 1, places: [] };
  }
}

function limitsBasis(characteristic: Characteristic, accept: 'each' | 'mean'): Demand['basis'] {
  return characteristic.kind === 'graded' ? { by: 'grade' } : { by: 'limits', accept };
}

function classPlans(pen: Pen, product: string, gate: string, characteristic: string, rule: AttributesRule, lotSize: number, original: boolean): ClassPlan[] {
  return FINDING_CLASSES.flatMap((each) => {
    const aqlPercent = rule.aqlPercent[each];
    if (aqlPercent === undefined) return [];
    const switching = switchingStream(product, gate, characteristic, each);
    return [{ class: each, switching, plan: singlePlan({ lotSize, level: rule.level, aqlPercent, severity: severityOf(pen, switching, original) }) }];
  });
}

/** Pieces counted along the trays in order: piece 1 is tray 1, position 1. A charge or batch without trays has no drawn pieces. */
function drawn(subject: Subject, lotSize: number, sizes: readonly number[], seed: string): Place[] {
  if (subject.kind !== 'lot') return [];
  return drawInStages(lotSize, sizes, seed).map((piece) => ({ at: 'tray', piece, tray: Math.ceil(piece / subject.trayCapacity), position: ((piece - 1) % subject.trayCapacity) + 1 }));
}

/** Fills in limits that follow from the powder: target press weight ± the plan's tolerance. */
function withPressLimits(subject: Subject, characteristic: Characteristic): Characteristic {
  if (characteristic.kind !== 'measured' || characteristic.pressTolerancePercent === null || subject.kind !== 'lot') return characteristic;
  const scale = 10 ** characteristic.decimals;
  const rounded = (value: number): number => Math.round(value * scale) / scale;
  const { weightG } = subject.press;
  const share = characteristic.pressTolerancePercent / 100;
  const [lower, upper] = [rounded(weightG * (1 - share)), rounded(weightG * (1 + share))];
  if (lower >= upper) refuse({ code: 'planUnsound', where: characteristic.name, why: 'tooFewDecimals' });
  return { ...characteristic, target: rounded(weightG), lower, upper } satisfies Measured;
}
