import { between, gradeLimitLines } from './grade-limits.en.ts';
import type { CatalogueSlip, GaugeSlip, PersonSlip, PlanSlip, PlantSlip, Role, SwitchingSlip } from '../traveller/index.ts';
import { signatureSentence } from './gate-slips.en.ts';
import { gaugeSpreadSlipWords } from './gauge-spread-slips.en.ts';
import type { Said } from './said.ts';
import { personName } from './speak.ts';
import type { Speak } from './speak.ts';
import type { WordsFor } from './words-for.ts';

const only = (sentence: string): Said => ({ sentence, lines: [] });
const demoLine = (demo: boolean): readonly string[] => (demo ? ['Invented demo data.'] : []);
const rolesText = (roles: readonly Role[], { format, labels }: Speak): string => format.list(roles.map((role) => labels.roles[role]));

type Moved = Extract<SwitchingSlip, { readonly type: 'lotCounted' }>['moved'];
function movedLines(moved: Moved, { format, labels }: Speak): readonly string[] {
  if (moved === null) return [];
  const lots = moved.lots.length === 0 ? '' : ` (${format.list(moved.lots)})`;
  return [`From ${labels.severities[moved.from]} to ${labels.severities[moved.to]} inspection: ${labels.moveReasons[moved.why]}${lots}`];
}
function movedWord(moved: Moved, { labels }: Speak): string {
  return moved === null ? '' : `; ${labels.severities[moved.to]} from the next lot`;
}

/** What switching states tell. */
export const switchingSlipWords: WordsFor<SwitchingSlip, 'type', Said, [Speak]> = {
  switchingStarted: ({ rule, aqlPercent, class: each }, { format }) => only(`Began on normal inspection by ${rule}${each === null ? '' : `, ${each}`}, AQL ${format.number(aqlPercent)}`),
  switchingRuleSet: ({ rule, aqlPercent }, { format }) => only(`The plan in force now asks for ${rule}, AQL ${format.number(aqlPercent)}: the severity stands, score and counts begin anew`),
  lotCounted: ({ event, counts, moved }, speak) => ({
    sentence: `Lot ${event.lot} ${event.accepted ? 'accepted' : 'not accepted'}: ${speak.format.count(event.found)} found in ${speak.format.count(event.sampleSize)}${counts ? '' : ', opened under another severity and not counted'}${movedWord(moved, speak)}`,
    lines: movedLines(moved, speak),
  }),
  lotRecounted: ({ event, moved }, speak) => ({
    sentence: `Lot ${event.lot} counted anew after a correction: ${event.accepted ? 'accepted' : 'not accepted'}, ${speak.format.count(event.found)} found in ${speak.format.count(event.sampleSize)}${movedWord(moved, speak)}`,
    lines: movedLines(moved, speak),
  }),
  switchingSet: ({ steady, reducedAllowed, reason, moved }, speak) => {
    const set = [...(steady === null ? [] : [steady ? 'production is steady' : 'production is not steady']), ...(reducedAllowed === null ? [] : [reducedAllowed ? 'reduced inspection is allowed' : 'reduced inspection is not allowed'])];
    return { sentence: `Stated: ${speak.format.list(set)}${movedWord(moved, speak)}`, lines: [`Reason: ${reason}`, ...movedLines(moved, speak)] };
  },
  inspectionResumed: ({ reason, signature }, speak) => ({ sentence: `Inspection goes on, on tightened: ${reason}`, lines: [signatureSentence(signature, speak)] }),
};

/** What plans, the catalogue, gauges, people and the plant tell. */
export const recordSlipWords: WordsFor<PlanSlip | CatalogueSlip | GaugeSlip | PersonSlip | PlantSlip, 'type', Said, [Speak]> = {
  planDrafted: ({ plan, planVersion, why }, { format }) => ({ sentence: `Plan ${plan.name}, version ${format.count(planVersion)} drafted: ${why}`, lines: plan.gates.map(({ name }) => name) }),
  planApproved: ({ planVersion, signature, inForce }, speak) => ({
    sentence: `Version ${speak.format.count(planVersion)} approved${inForce ? ': it is now in force' : ', one more approval is needed'}`, lines: [signatureSentence(signature, speak)],
  }),
  productDefined: ({ product }, { format }) => ({
    sentence: `Product ${product.id} defined: ${product.designation}, ${product.name}`,
    lines: [`Grade ${product.grade}, ${product.layer === null ? 'uncoated' : `coating ${product.layer}`}, plan ${product.plan}, item ${product.itemCode}`, `${format.count(product.piecesPerBox)} a box; ${format.number(product.sinteredVolumeMm3)} mm³ sintered, ${format.number(product.thicknessMm)} mm thick; marked ${product.marking}`],
  }),
  gradeDefined: ({ grade }, { format }) => ({
    sentence: `Grade ${grade.id} defined: ${grade.name}`,
    lines: [grade.composition.map(({ component, massPercent, densityGPerCm3 }) => `${component} ${format.number(massPercent)} %${densityGPerCm3 === undefined ? '' : ` (${format.number(densityGPerCm3)} g/cm³)`}`).join(' · '), `Powder plan ${grade.powderPlan}, furnace plan ${grade.furnacePlan}`, ...gradeLimitLines(grade.limits, format)],
  }),
  layerDefined: ({ layer }, { format }) => ({
    sentence: `Coating ${layer.id} defined: ${layer.name}, plan ${layer.coatingPlan}`, lines: layer.layers === undefined ? [] : [`From the surface: ${layer.layers.map(({ name, lowerUm, upperUm }) => `${name} ${between(lowerUm, upperUm, format)} µm`).join(' · ')}`],
  }),
  gaugeRegistered: ({ gauge }, { format, labels }) => ({
    sentence: `Gauge ${gauge.id} registered: ${gauge.name}`,
    lines: [`${gauge.gaugeKind}, ${format.number(gauge.least)} … ${format.number(gauge.most)} ${gauge.unit}, resolution ${format.number(gauge.resolution)}, ${labels.uncertainty(format.number(gauge.expandedUncertainty), gauge.coverageFactor)}`, `Calibrated until ${format.date(gauge.calibrationDue)}`],
  }),
  gaugeCalibrated: ({ calibrationDue, expandedUncertainty, certificate, coverageFactor, asFound }, { format, labels }) => ({
    sentence: `Calibrated until ${format.date(calibrationDue)}, ${labels.uncertainty(format.number(expandedUncertainty), coverageFactor)}, certificate ${certificate}`,
    lines: asFound === undefined ? [] : [`As found: error ${format.number(asFound.error)}, allowed ± ${format.number(asFound.allowedError)}`],
  }),
  gaugeChecked: ({ master, nominal, found, allowedError, passed }, { format }) => only(`${passed ? 'Check good' : 'Check bad'}: ${format.number(found)} found on ${master}, ${format.number(nominal)}, allowed ± ${format.number(allowedError)}`),
  gaugeLineChanged: ({ line: { number, after, unit, factor } }, { format }) => only(`Its line is read anew: number ${format.count(number)}${after === '' ? '' : ` behind “${after}”`}${unit === '' ? '' : `, in ${unit}`}${factor === 1 ? '' : `, times ${format.number(factor)}`}`),
  recallOpened: ({ recall, found, since, error, allowedError }, { format }) => ({
    sentence: `Recall ${recall}: found out of tolerance by a ${found}, error ${format.number(error)}, allowed ± ${format.number(allowedError)}`,
    lines: [since === null ? 'No good check is known: every reading is in doubt.' : `In doubt is what was read since ${format.dateTime(since)}.`],
  }),
  recallHeld: ({ recall, held, reason, signature }, { format }) => ({ sentence: `Recall ${recall}: ${format.count(held.length)} put on hold. ${reason}`, lines: [`Signed: ${signature.name} (${signature.badge})`] }),
  recallClosed: ({ recall, reason, signature }) => ({ sentence: `Recall ${recall} closed: ${reason}`, lines: [`Signed: ${signature.name} (${signature.badge})`] }),
  ...gaugeSpreadSlipWords,
  gaugeWithdrawn: ({ reason }) => only(`Gauge withdrawn from use: ${reason}`),
  personEnrolled: ({ badge, name, roles }, speak) => only(`${name} (${badge}) enrolled as ${rolesText(roles, speak)}`),
  personChanged: ({ name, roles, active, reason }, speak) => only(`${name}: ${active ? rolesText(roles, speak) : 'no longer active'}. ${reason}`),
  pinChanged: ({ own }) => only(own ? 'PIN changed by its owner' : 'PIN set by the keeper'),
  plantOpened: ({ plant, keeper }, speak) => ({ sentence: `Plant opened: ${plant.name}`, lines: [`${plant.address}, ${plant.country}`, `First keeper ${personName(speak, keeper)}`, ...demoLine(plant.demo)] }),
  headsSigned: ({ digest, streams, position, signature }, { format }) => ({
    sentence: `Journal sealed at entry ${format.count(position)}: ${format.count(streams)} threads`, lines: [`Digest ${digest}`, `Signature ${signature}`],
  }),
};
