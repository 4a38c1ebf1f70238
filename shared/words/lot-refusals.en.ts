import { piecesText, streamText } from './speak.ts';
import { labelOf } from './words-for.ts';
import type { RefusalWords } from './told-refusal.ts';

const NOTHING = 'Nothing was written.';

/** Refusals about whole lots, batches, charges, releases and boxes. */
export const lotRefusalWords = {
  dispositionNotForThis: ({ disposition, possible }, { format, labels }) => ({
    happened: `“${labels.dispositions[disposition].name}” cannot be decided for this hold.`, kept: `${NOTHING} The hold stands.`,
    next: `Possible here: ${format.either(possible.map((each) => labels.dispositions[each].name))}.`,
  }),
  notEnoughPieces: ({ wanted, remaining }, speak) => ({
    happened: `${piecesText(speak, wanted)} wanted, ${speak.format.count(remaining)} loose here.`, kept: `${NOTHING} The piece balance is as before.`,
    next: remaining < 1 ? 'Check the number of the lot and the count.' : `Take at least 1 and at most ${speak.format.count(remaining)}.`,
  }),
  sortNotAskedFor: ({ gate, status }, { labels }) => ({
    happened: `No sort was asked for at ${gate}. It stands at: ${labelOf(labels.gateStatuses, status)}.`, kept: NOTHING, next: 'A quality engineer decides on a sort first, where the lot is on hold.',
  }),
  sortNotWhole: ({ looked, remaining }, speak) => ({
    happened: `${piecesText(speak, looked)} entered as looked at, ${speak.format.count(remaining)} are in the lot.`, kept: NOTHING,
    next: 'A sort looks at every piece: count again, those taken out included.',
  }),
  batchNotReleased: ({ batch }) => ({ happened: `Powder batch ${batch} is not released.`, kept: NOTHING, next: 'The lab releases the batch when its gates have passed. Then open the lot.' }),
  notEnoughPowder: ({ batch, wantedKg, remainingKg }, { format }) => ({
    happened: `${format.number(wantedKg)} kg of ${batch} wanted; ${format.number(remainingKg)} kg are left.`, kept: `${NOTHING} The powder balance is as before.`, next: 'Take less, or take another batch as well.',
  }),
  blendImpossible: ({ batch, why }) => ({
    happened: { fewerThanTwo: `A blend is mixed from two batches or more; ${batch} names fewer.`, namedTwice: `${batch} is named twice in the blend.`, massUnfit: `What is taken of ${batch} must be a mass above 0, to the gram.` }[why],
    kept: NOTHING, next: { fewerThanTwo: 'Name the other batch, or press from the one there is.', namedTwice: 'Name it once, with all that is taken of it.', massUnfit: 'Enter the mass in kg with at most three decimals.' }[why],
  }),
  factorMissing: ({ batch, factor }, { labels }) => ({
    happened: `${batch} has no accepted result for ${labelOf(labels.factors, factor)}, which pressing needs.`, kept: NOTHING, next: 'Have it measured at the gates of the batch. Where its plan does not ask for it, a quality engineer adds it.',
  }),
  gradeDiffers: ({ lot, has, wanted }) => ({
    happened: `${lot} is of ${has === '' ? 'no coating' : has}; ${wanted} is asked for.`, kept: NOTHING, next: 'Check the number of the lot, or choose what fits its grade or coating.',
  }),
  lotNotReadyForCharge: ({ lot, gate, next }) => ({
    happened: `${lot} has not come to ${gate === '' ? 'this charge' : gate} yet.`, kept: NOTHING, next: next === null ? 'All its gates have passed: it needs no charge.' : `Finish ${next} first, or leave the lot out of the charge.`,
  }),
  lotIsInCharge: ({ lot, charge }, speak) => ({ happened: `${lot} stands in ${streamText(speak, charge)} already.`, kept: NOTHING, next: 'Leave it out here, or check the number of the lot.' }),
  positionUnknown: ({ position }) => ({ happened: `There is no place ${position} in this charge.`, kept: NOTHING, next: 'Choose one of the places that the plan names.' }),
  notAllGatesPassed: ({ missing }, { format }) => ({ happened: `Not every gate has passed: ${format.list(missing)}.`, kept: `${NOTHING} Nothing is released.`, next: 'Finish these gates, then release.' }),
  workerReleasesAlone: ({ gate, badge }) => ({
    happened: `${badge} worked ${gate}, the last gate, and so cannot release alone.`, kept: `${NOTHING} Nothing is released.`, next: 'Let a second releaser sign with you, or leave the release to another.',
  }),
  coSignerCannot: ({ badge, why }) => ({
    happened: `${badge} cannot sign with you: ${{ samePerson: 'that is yourself', notReleaser: 'that person is not a releaser', workedLastGate: 'that person worked the last gate too' }[why]}.`,
    kept: `${NOTHING} Nothing is released.`, next: 'Ask another releaser who did not work the last gate.',
  }),
  alreadyReleased: ({ certificate }) => ({
    happened: `This is released already: ${certificate}.`, kept: 'The release stands as it was signed.', next: 'To change what it rests on, the release must be withdrawn first, with a reason.',
  }),
  notReleased: ({ lot, why }) => ({
    happened: `${lot} ${{ never: 'is not released', withdrawn: 'is no longer released: its release was withdrawn', held: 'was released but is on hold' }[why]}.`, kept: NOTHING,
    next: why === 'held' ? 'Leave it where it stands until a quality engineer has decided about the hold.' : 'A releaser releases it first. Then packing, labels, shipping and certificate are open.',
  }),
  boxTooFull: ({ pieces, most }, speak) => ({ happened: `${piecesText(speak, pieces)} do not go into one box.`, kept: NOTHING, next: `Pack at most ${speak.format.count(most)} and open another box for the rest.` }),
  boxIsGone: ({ box, why }) => ({
    happened: `Box ${box} ${why === 'voided' ? 'was voided' : 'has been shipped'}.`, kept: NOTHING, next: why === 'voided' ? 'Destroy its label and pack a new box.' : 'Check the number on the label.',
  }),
  boxesToVoid: ({ lot, boxes }, { format, labels }) => ({
    happened: `${labels.boxes(boxes, format.count(boxes))} of ${lot} ${boxes === 1 ? 'stands' : 'stand'} packed here; what is decided must find every piece loose.`, kept: NOTHING,
    next: 'Let a packer void these boxes first, then decide again.',
  }),
  labelNotPrinted: ({ box }) => ({ happened: `Box ${box} has no printed label.`, kept: NOTHING, next: 'Print the label first.' }),
  labelNotReadBack: ({ box }) => ({ happened: `The label of box ${box} has not been read back.`, kept: NOTHING, next: 'Scan the label on the box, then ship it.' }),
  labelDiffers: ({ box, field, read, wanted }) => ({
    happened: `The label on this box is not that of ${box}: ${field} reads ${read}, not ${wanted}.`, kept: NOTHING, next: 'Put the box aside, find the right label and read it back. A damaged one is printed again, with a reason.',
  }),
} satisfies Partial<RefusalWords>;
