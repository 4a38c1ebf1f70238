import type { CommonSlip, GateSlip, LotSlip } from '../traveller/index.ts';
import { signatureSentence } from './gate-slips.en.ts';
import { verdictLines, verdictSentence } from './results.en.ts';
import type { Said } from './said.ts';
import { pressTargetSlipWords, targetText } from './powder-slips.en.ts';
import { findingName, gateName, piecesText, streamText } from './speak.ts';
import type { Speak } from './speak.ts';
import type { WordsFor } from './words-for.ts';

const only = (sentence: string): Said => ({ sentence, lines: [] });

/** What only an insert lot tells: its opening, its way through charges, its pieces, its release and its boxes. */
export const lotSlipWords: WordsFor<Exclude<LotSlip, GateSlip | CommonSlip>, 'type', Said, [Speak]> = {
  lotOpened: ({ lot, product, plan, planVersion, route, batch, quantity, order, press, splitFrom, demo }, speak) => {
    const { format } = speak;
    return {
      sentence: `Lot ${lot} opened: ${piecesText(speak, quantity)} of ${product.designation}${splitFrom === null ? '' : `, split off from ${splitFrom}`}`,
      lines: [
        `Product ${product.id}, ${product.name}; grade ${product.grade}${product.layer === null ? ', uncoated' : `, coating ${product.layer}`}`,
        `Plan ${plan} version ${format.count(planVersion)}: ${route.map(({ name }) => name).join(' → ')}`,
        `Powder batch ${batch}. Press to ${targetText(press, speak)}`,
        ...(order === null ? [] : [`Order ${order}`]),
        ...(demo ? ['Invented demo data.'] : []),
      ],
    };
  },
  ...pressTargetSlipWords,
  chargeJoined: ({ charge, gate, places }, speak) => only(`Placed in ${streamText(speak, charge)} for ${gateName(speak, gate)}${places.length === 0 ? '' : `: ${speak.format.list(places)}`}`),
  gateVerdictInherited: ({ gate, from, verdict, revised }, speak) => ({
    sentence: `${gateName(speak, gate)}, from ${streamText(speak, from)}${revised ? ', revised' : ''}: ${verdictSentence(verdict, speak)}`,
    lines: verdictLines(verdict, speak),
  }),
  gateReopened: ({ gate, from, disposition, statement, hold, signature }, speak) => ({
    sentence: disposition === 'concession'
      ? `${gateName(speak, gate)} accepted on concession, decided at ${streamText(speak, from)}: ${statement ?? ''}`
      : `${gateName(speak, gate)} is to be done again (${speak.labels.dispositions[disposition].name}), decided at ${streamText(speak, from)}`,
    lines: [...(hold === null ? [] : [`Hold ${hold} is lifted.`]), signatureSentence(signature, speak)],
  }),
  lotSorted: ({ gate, looked, removed }, speak) => {
    const out = removed.reduce((sum, { pieces }) => sum + pieces, 0);
    const nameOf = (code: string): string => {
      const counted = speak.subject?.gates.find(({ id }) => id === gate)?.work.map(({ demand }) => demand.characteristic.id) ?? [];
      return counted.map((id) => findingName(speak, gate, id, code)).find((name) => name !== code) ?? code;
    };
    return {
      sentence: `Sorted at ${gateName(speak, gate)}: ${piecesText(speak, looked)} looked at, ${speak.format.count(out)} taken out`,
      lines: removed.map(({ code, pieces }) => `${nameOf(code)}: ${piecesText(speak, pieces)}`),
    };
  },
  piecesDestroyed: ({ pieces, gate, reason }, speak) => only(`${piecesText(speak, pieces)} used up${gate === null ? '' : ` at ${gateName(speak, gate)}`}: ${reason}`),
  piecesScrapped: ({ pieces, gate, reason }, speak) => only(`${piecesText(speak, pieces)} scrapped${gate === null ? '' : ` at ${gateName(speak, gate)}`}: ${reason}`),
  piecesSplitOff: ({ into, pieces, reason }, speak) => only(`${piecesText(speak, pieces)} split off into lot ${into}: ${reason}`),
  lotReleased: ({ certificate, quantity, signatures }, speak) => ({
    sentence: `Released: ${piecesText(speak, quantity)}, certificate ${certificate}`, lines: signatures.map((signature) => signatureSentence(signature, speak)),
  }),
  lotMovedToPlan: ({ plan, from, planVersion, reason, signature }, speak) => ({ sentence: `Moved from version ${speak.format.count(from)} of plan ${plan} to version ${speak.format.count(planVersion)}: ${reason}`, lines: [signatureSentence(signature, speak)] }),
  releaseWithdrawn: ({ certificate, reason, signature }, speak) => ({ sentence: `Release withdrawn, certificate ${certificate} counts no longer: ${reason}`, lines: [signatureSentence(signature, speak)] }),
  boxPacked: ({ box, pieces }, speak) => only(`Box ${box} packed: ${piecesText(speak, pieces)}`),
  labelPrinted: ({ box, copy, reason }, { format }) => only(copy === 1 ? `Label of box ${box} printed` : `Label of box ${box} printed again (copy ${format.count(copy)}): ${reason ?? ''}`),
  labelRead: ({ box }) => only(`Label of box ${box} read back: it is right`),
  boxVoided: ({ box, reason }) => only(`Box ${box} voided, its pieces are loose again: ${reason}`),
  boxShipped: ({ box, shipment, order, consignee }) => ({ sentence: `Box ${box} shipped with ${shipment}`, lines: [`Order ${order}`, `To ${consignee}`] }),
};
