import { BrokenThread } from '../broken-thread.ts';
import { evolveCommon, evolveGateWork, isCommonSlip, isGateSlip, moved } from '../gate/evolve-common.ts';
import { freshGates, withGate } from '../gate/evolve-gates.ts';
import type { CommonSlip, GateSlip } from '../gate/slips.ts';
import { movePieces, openBalance, remainingPieces } from '../piece-balance/piece-balance.ts';
import type { Slip } from '../slip.ts';
import type { Box, Lot } from './lot.ts';
import type { LotSlip } from './slips.ts';

type Own = Exclude<LotSlip, GateSlip | CommonSlip>;

/** The lot after one more slip. Rules are not asked again: the slip is history, and a thread that cannot be one throws BrokenThread. */
export function evolveLot(lot: Lot | null, slip: Slip<LotSlip>): Lot {
  const { body } = slip;
  if (lot === null) {
    if (body.type !== 'lotOpened') throw new BrokenThread(`the thread of ${slip.stream} begins with ${body.type}`);
    return open(slip, body);
  }
  if (isGateSlip(slip)) return fed(evolveGateWork(lot, slip), slip);
  if (isCommonSlip(slip)) return afterCommon(lot, slip);
  return evolveOwn(moved(lot, slip), slip, body as Own);
}

/** Notes how far a press's feed has come, so that nothing it sends again counts twice. */
function fed(lot: Lot, { body, at }: Slip<GateSlip>): Lot {
  if (body.type !== 'weightsTaken' || body.feed === undefined) return lot;
  const { press, fromSeq, count } = body.feed;
  return { ...lot, feeds: [...(lot.feeds ?? []).filter((feed) => feed.press !== press), { press, toSeq: fromSeq + body.values.length - 1, at, ...(count === undefined ? {} : { count }) }] };
}

function open(slip: Slip, body: Extract<Own, { type: 'lotOpened' }>): Lot {
  return {
    kind: 'lot', id: body.lot, stream: slip.stream, version: slip.version, openedAt: slip.at, lastAt: slip.at, demo: body.demo,
    gates: freshGates(body.route), holds: [], corrections: [], ended: null,
    product: body.product, plan: body.plan, planVersion: body.planVersion, batch: body.batch, order: body.order, trayCapacity: body.trayCapacity,
    balance: openBalance(body.quantity), press: body.press, pressOutdated: null, splitFrom: body.splitFrom, splitInto: [], charges: [], concessions: [], release: null, releases: 0, boxes: [],
  };
}

function afterCommon(lot: Lot, slip: Slip<CommonSlip>): Lot {
  const next = evolveCommon(lot, slip);
  const { body } = slip;
  if (body.type !== 'disposed') return next;
  const regraded = body.regraded === undefined ? next : { ...next, product: body.regraded.product, plan: body.regraded.plan, planVersion: body.regraded.planVersion };
  switch (body.disposition.kind) {
    case 'scrap': return { ...regraded, balance: movePieces(lot.balance, 'scrapped', remainingPieces(lot.balance)), ended: { how: 'scrapped', at: slip.at } };
    case 'return': return { ...regraded, balance: movePieces(lot.balance, 'returned', remainingPieces(lot.balance)), ended: { how: 'returned', at: slip.at } };
    case 'reSinter': case 'recoat': return { ...regraded, charges: lot.charges.map((link) => (link.gate === body.gate ? { ...link, current: false } : link)) };
    default: return regraded;
  }
}

function evolveOwn(lot: Lot, slip: Slip, body: Own): Lot {
  switch (body.type) {
    case 'lotOpened': throw new BrokenThread(`lot ${lot.id} was opened twice`);
    case 'pressTargetRevised': return { ...lot, press: body.press };
    case 'pressTargetOutdated': return { ...lot, pressOutdated: body.press };
    case 'chargeJoined': return { ...lot, charges: [...lot.charges, { charge: body.charge, gate: body.gate, places: body.places, current: true, cells: body.cells ?? null, again: body.again ?? null, member: body.member ?? lot.id }] };
    case 'gateVerdictInherited':
      return {
        ...lot,
        gates: withGate(lot.gates, body.gate, (gate) => ({
          ...gate, status: gate.status === 'conceded' ? 'conceded' : body.verdict.accepted ? 'accepted' : 'rejected', attempt: body.verdict.attempt,
          verdicts: [...gate.verdicts, { verdict: body.verdict, at: slip.at, by: slip.by, slip: slip.version, from: body.from, revises: body.revised ? '' : null }],
        })),
      };
    case 'gateReopened': return reopened(lot, slip, body);
    case 'lotMovedToPlan':
      return { ...lot, planVersion: body.planVersion, gates: freshGates(body.route).map((fresh) => lot.gates.find((gate) => gate.id === fresh.id && (gate.attempt > 0 || gate.verdicts.length > 0)) ?? fresh) };
    case 'lotSorted': {
      const removed = body.removed.reduce((sum, { pieces }) => sum + pieces, 0);
      return {
        ...lot, balance: movePieces(lot.balance, 'scrapped', removed),
        gates: withGate(lot.gates, body.gate, (gate) => ({ ...gate, status: 'waiting', original: false, sorted: [...gate.sorted, { looked: body.looked, removed, at: slip.at, by: slip.by }] })),
      };
    }
    case 'piecesDestroyed': return { ...lot, balance: movePieces(lot.balance, 'destroyed', body.pieces) };
    case 'piecesScrapped': return { ...lot, balance: movePieces(lot.balance, 'scrapped', body.pieces) };
    case 'piecesSplitOff': return { ...lot, balance: movePieces(lot.balance, 'splitOff', body.pieces), splitInto: [...lot.splitInto, body.into] };
    case 'lotReleased': return { ...lot, releases: lot.releases + 1, release: { certificate: body.certificate, quantity: body.quantity, at: slip.at, signatures: body.signatures, withdrawn: null } };
    case 'releaseWithdrawn': return { ...lot, release: lot.release === null ? null : { ...lot.release, withdrawn: { at: slip.at, reason: body.reason } } };
    case 'boxPacked': return { ...lot, balance: movePieces(lot.balance, 'boxed', body.pieces), boxes: [...lot.boxes, { serial: body.box, pieces: body.pieces, packedAt: slip.at, packedBy: slip.by, copies: 0, payload: null, readBack: false, voided: null, shipped: null }] };
    case 'labelPrinted': return withBox(lot, body.box, (box) => ({ ...box, copies: body.copy, payload: body.payload, readBack: false }));
    case 'labelRead': return withBox(lot, body.box, (box) => ({ ...box, readBack: true }));
    case 'boxVoided': {
      const pieces = lot.boxes.find(({ serial }) => serial === body.box)?.pieces ?? 0;
      return withBox({ ...lot, balance: movePieces(lot.balance, 'boxed', -pieces) }, body.box, (box) => ({ ...box, voided: body.reason }));
    }
    case 'boxShipped': return withBox(lot, body.box, (box) => ({ ...box, shipped: { shipment: body.shipment, order: body.order, consignee: body.consignee, at: slip.at, by: slip.by } }));
  }
}

function reopened(lot: Lot, slip: Slip, body: Extract<Own, { type: 'gateReopened' }>): Lot {
  const conceded = body.disposition === 'concession';
  return {
    ...lot,
    holds: lot.holds.map((hold) => (hold.id === body.hold ? { ...hold, lifted: { at: slip.at, by: slip.by, disposition: conceded ? { kind: 'concession' as const, statement: body.statement ?? '' } : { kind: 'retest' as const }, reason: '' } } : hold)),
    gates: withGate(lot.gates, body.gate, (gate) => ({ ...gate, status: conceded ? 'conceded' : 'waiting', original: conceded ? gate.original : false })),
    charges: lot.charges.map((link) => (link.charge === body.from && (body.disposition === 'reSinter' || body.disposition === 'recoat') ? { ...link, current: false } : link)),
    concessions: conceded ? [...lot.concessions.filter(({ gate, from, statement, signature }) => gate !== body.gate || from !== body.from || statement !== body.statement || signature.at !== body.signature.at), { gate: body.gate, statement: body.statement ?? '', signature: body.signature, from: body.from }] : lot.concessions,
  };
}

function withBox(lot: Lot, serial: string, change: (box: Box) => Box): Lot {
  if (!lot.boxes.some((box) => box.serial === serial)) throw new BrokenThread(`lot ${lot.id} has no box ${serial}`);
  return { ...lot, boxes: lot.boxes.map((box) => (box.serial === serial ? change(box) : box)) };
}
