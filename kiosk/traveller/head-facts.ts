import { nextGate, remainingKg, remainingPieces, standingHolds, streamParts } from '../../shared/traveller/index.ts';
import type { BlendShare, PowderFactors, PressTarget, SwitchingSeverity, Subject } from '../../shared/traveller/index.ts';
import type { HeadFact } from '../parts/gh-traveller-head.ts';
import type { StateName } from '../parts/state-name.ts';
import { passedGates } from './asked-now.ts';
import { powderToPressWords } from '../../shared/words/powder-to-press.en.ts';
import { catalogue, format, travellerWords } from './speak.ts';

const powder = powderToPressWords.facts;

/** What the subject is, in one line. */
export function whatItIs(subject: Subject): string {
  switch (subject.kind) {
    case 'lot': return `${subject.product.designation} · ${subject.product.name}`;
    case 'batch': return subject.grade.name;
    case 'furnace': case 'coating': return subject.specification.name;
  }
}

/** Where the subject stands, as its mark and word. */
export function standingOf(subject: Subject): { readonly state: StateName; readonly word: string } {
  const words = travellerWords().state;
  if (subject.ended !== null) return { state: 'scrapped', word: words.ended[subject.ended.how] };
  if (standingHolds(subject).length > 0) return { state: 'hold', word: words.held };
  const gate = nextGate(subject);
  if (gate === null) return afterLastGate(subject);
  if (gate.status === 'open') return { state: 'open', word: words.open(gate.name) };
  return gate.status === 'sorting' ? { state: 'open', word: words.sorting(gate.name) } : { state: 'waiting', word: words.waiting(gate.name) };
}

function afterLastGate(subject: Subject): { readonly state: StateName; readonly word: string } {
  const words = travellerWords().state;
  if (subject.kind === 'furnace' || subject.kind === 'coating') return { state: 'accepted', word: words.done };
  return isLetGo(subject) ? { state: 'released', word: words.released } : { state: 'due', word: words.toRelease };
}

/** Released, for a lot or a batch; a charge has nothing more to be signed. */
function isLetGo(subject: Subject): boolean {
  if (subject.kind === 'lot') return subject.release !== null && subject.release.withdrawn === null;
  return subject.kind !== 'batch' || subject.released !== null;
}

/** The facts written at the head of a traveller. */
export function headFacts(subject: Subject): HeadFact[] {
  const words = travellerWords().facts;
  const { count, number, date } = format();
  const gates = { label: words.gates, text: `${passedGates(subject)} / ${subject.gates.length}` };
  const plan = { label: words.plan, text: words.planVersion(subject.plan, subject.planVersion) };
  const opened = { label: words.opened, text: date(subject.openedAt) };
  switch (subject.kind) {
    case 'lot': {
      const charges = subject.charges.filter(({ current }) => current).flatMap(({ charge }) => {
        const parts = streamParts(charge);
        return parts === null ? [] : [{ label: parts.kind === 'furnace' ? words.furnace : words.coating, text: parts.id }];
      });
      return [
        { label: words.pieces, text: words.of(count(remainingPieces(subject.balance)), count(subject.balance.opened)) }, gates,
        { label: words.batch, text: subject.batch }, ...charges, ...(subject.order === null ? [] : [{ label: words.order, text: subject.order }]),
        { label: words.press, text: `${number(subject.press.weightG, 3)} g` }, { label: words.shrinkage, text: shrinkageText(subject.press) }, plan, opened,
        ...(subject.splitFrom === null ? [] : [{ label: words.from, text: subject.splitFrom }]),
      ];
    }
    case 'batch': {
      const factors = subject.released?.factors;
      return [
        { label: words.barrels, text: words.barrelsOf(subject.barrels, number(subject.kgPerBarrel)) }, gates,
        ...(factors === undefined ? [] : [{ label: powder.left, text: powder.kg(number(remainingKg(subject)), number(subject.barrels * subject.kgPerBarrel)) }, { label: words.shrinkage, text: shrinkageText(factors) }, { label: words.density, text: `${number(factors.sinteredDensityGPerCm3, 2)} g/cm³` }]),
        ...(subject.blendedFrom.length === 0 ? [{ label: words.raw, text: subject.rawLots.map(({ rawLot }) => rawLot).join(', ') }] : [{ label: powder.blendedFrom, text: sharesText(subject.blendedFrom) }]),
        ...(subject.blendedInto.length === 0 ? [] : [{ label: powder.blendedInto, text: sharesText(subject.blendedInto) }]), { label: words.lots, text: count(subject.lots.length) }, plan, opened,
      ];
    }
    case 'furnace': case 'coating':
      return [{ label: words.lots, text: subject.members.map(({ lot }) => lot).join(', ') }, gates, { label: words.programme, text: subject.programme }, { label: words.equipment, text: subject.equipment }, plan, opened];
  }
}

/** In the plane, and along pressing where it was measured. */
function shrinkageText({ linearShrinkagePercent, heightShrinkagePercent }: PowderFactors | PressTarget): string {
  const { number } = format();
  return [`${number(linearShrinkagePercent, 2)} %`, ...(heightShrinkagePercent === undefined ? [] : [`${number(heightShrinkagePercent, 2)} % ${powder.along}`])].join(', ');
}
function sharesText(shares: readonly BlendShare[]): string {
  return shares.map(({ batch, kg }) => powder.share(batch, format().number(kg))).join(', ');
}

/** Severities other than normal that the gate in work was opened under. */
export function severitiesInForce(subject: Subject): SwitchingSeverity[] {
  const open = subject.gates.find(({ status }) => status === 'open');
  const severities = (open?.work ?? []).flatMap(({ demand: { basis } }): SwitchingSeverity[] => {
    if (basis.by === 'attributes') return basis.classes.flatMap(({ plan }) => ('severity' in plan ? [plan.severity] : []));
    return basis.by === 'variables' ? [basis.plan.severity] : [];
  });
  return [...new Set(severities)].filter((severity) => severity !== 'normal');
}

/** The name of a severity. */
export function severityWord(severity: SwitchingSeverity): string {
  return catalogue().labels.severities[severity];
}
