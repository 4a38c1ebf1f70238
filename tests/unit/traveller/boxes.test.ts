import { beforeEach, describe, expect, it } from 'vitest';
import { buildBoxCode, readBoxCode } from '../../../shared/traveller/box-code/index.ts';
import { remainingPieces } from '../../../shared/traveller/index.ts';
import type { Command } from '../../../shared/traveller/index.ts';
import { CREW, littlePlant, releasedBatch, SHORT_ROUTE } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { labelledBox, passedLot, releasedLot } from '../../property/traveller/on-the-way.ts';

let plant: LittlePlant;
beforeEach(() => {
  plant = littlePlant(SHORT_ROUTE);
  releasedBatch(plant);
  releasedLot(plant, 'A1', 25);
});
const pack = (pieces = 10): Command => ({ type: 'packBox', lot: 'A1', pieces });
const print = (more: { readonly reason?: string } = {}): Command => ({ type: 'printLabel', lot: 'A1', box: 'A1-001', ...more });
const ship: Command = { type: 'shipBox', lot: 'A1', box: 'A1-001', shipment: 'S1', order: 'O1', consignee: 'Invented shop' };
const payload = (): string => plant.lot('A1').boxes[0]?.payload ?? '';

describe('a box', () => {
  it('comes only from a released lot', () => {
    passedLot(plant, 'A2', 10);
    expect(plant.ask({ type: 'packBox', lot: 'A2', pieces: 10 })).toEqual({ refusal: { code: 'notReleased', lot: 'A2', why: 'never' } });
  });

  it('holds no more than the product’s box and no more than is loose', () => {
    expect(plant.ask(pack(11))).toEqual({ refusal: { code: 'boxTooFull', pieces: 11, most: 10 } });
    for (const pieces of [10, 10]) plant.must(pack(pieces));
    expect(plant.ask(pack(6))).toEqual({ refusal: { code: 'notEnoughPieces', wanted: 6, remaining: 5 } });
    expect(plant.refusalOf(pack(0))).toBe('notEnoughPieces');
    plant.must(pack(5));
    expect([remainingPieces(plant.lot('A1').balance), plant.lot('A1').balance.boxed]).toEqual([0, 25]);
  });

  it('is packed, labelled and shipped by packers', () => {
    for (const person of CREW.slice(0, 4)) for (const command of [pack(), print(), ship]) expect(plant.refusalOf(command, person)).toBe('notYourRole');
    plant.must(pack(), CREW[4]);
  });

  it('voided gives its pieces back, keeps its serial for ever and cannot be used', () => {
    plant.must(pack());
    expect(plant.refusalOf({ type: 'voidBox', lot: 'A1', box: 'A1-001', reason: ' ' })).toBe('reasonMissing');
    plant.must({ type: 'voidBox', lot: 'A1', box: 'A1-001', reason: 'torn' });
    expect(remainingPieces(plant.lot('A1').balance)).toBe(25);
    plant.must(pack());
    expect(plant.lot('A1').boxes.map(({ serial }) => serial)).toEqual(['A1-001', 'A1-002']);
    for (const command of [print(), ship]) expect(plant.ask(command)).toEqual({ refusal: { code: 'boxIsGone', box: 'A1-001', why: 'voided' } });
  });

  it('whose serial would not fit its label is refused when packed, not when printed', () => {
    const card = plant.state('product:CNMG-D1');
    if (card?.kind !== 'product') throw new Error('no product');
    plant.must({ type: 'defineProduct', product: { ...card.card, piecesPerBox: 1 } }, CREW[2]);
    releasedLot(plant, 'L26-0417-000-001', 1001);
    for (let box = 1; box <= 999; box += 1) plant.must({ type: 'packBox', lot: 'L26-0417-000-001', pieces: 1 });
    expect(plant.ask({ type: 'packBox', lot: 'L26-0417-000-001', pieces: 1 })).toMatchObject({ refusal: { code: 'identifierUnfit', field: 'box', value: 'L26-0417-000-001-1000' } });
    plant.must({ type: 'printLabel', lot: 'L26-0417-000-001', box: 'L26-0417-000-001-999' });
  });
});

describe('a label', () => {
  beforeEach(() => plant.must(pack()));

  it('carries item, lot, serial, quantity, day and country', () => {
    plant.must(print());
    const { packedAt = '' } = plant.lot('A1').boxes[0] ?? {};
    expect(readBoxCode(payload())).toEqual({ ok: true, fields: { item: 'CNMG120408-D1', lot: 'A1', serial: 'A1-001', quantity: 10, packedOn: packedAt.slice(0, 10), country: 'XX' } });
  });

  it('is printed again only with a reason, and says which copy it is', () => {
    plant.must(print());
    expect(plant.refusalOf(print())).toBe('reasonMissing');
    expect(plant.refusalOf(print({ reason: ' ' }))).toBe('reasonMissing');
    expect(plant.must(print({ reason: 'smeared' }))[0]).toMatchObject({ type: 'labelPrinted', copy: 2, reason: 'smeared' });
  });

  it('is read back before the box leaves, and again after a new print', () => {
    expect(plant.refusalOf(ship)).toBe('labelNotPrinted');
    expect(plant.refusalOf({ type: 'readLabel', lot: 'A1', box: 'A1-001', payload: 'x' })).toBe('labelNotPrinted');
    plant.must(print());
    expect(plant.refusalOf(ship)).toBe('labelNotReadBack');
    plant.must({ type: 'readLabel', lot: 'A1', box: 'A1-001', payload: payload() });
    plant.must(print({ reason: 'smeared' }));
    expect(plant.refusalOf(ship)).toBe('labelNotReadBack');
    plant.must({ type: 'readLabel', lot: 'A1', box: 'A1-001', payload: payload() });
    expect(plant.must(ship)).toEqual([{ type: 'boxShipped', box: 'A1-001', shipment: 'S1', order: 'O1', consignee: 'Invented shop' }]);
    expect(plant.ask(ship)).toEqual({ refusal: { code: 'boxIsGone', box: 'A1-001', why: 'shipped' } });
  });

  const OWN = { item: 'CNMG120408-D1', lot: 'A1', serial: 'A1-001', quantity: 10, packedOn: '2026-11-20', country: 'XX' };
  it.each([
    { field: 'serial', read: 'A1-002' }, { field: 'lot', read: 'A2' }, { field: 'item', read: 'TNMG160404-D2' }, { field: 'quantity', read: 9 }, { field: 'packedOn', read: '2026-11-19' }, { field: 'country', read: 'DE' },
  ])('that differs in $field is named field by field', ({ field, read }) => {
    plant.must(print());
    expect(plant.ask({ type: 'readLabel', lot: 'A1', box: 'A1-001', payload: buildBoxCode({ ...OWN, [field]: read }) })).toMatchObject({ refusal: { code: 'labelDiffers', box: 'A1-001', field, read: String(read) } });
  });

  it('that is no code of a box is refused as such', () => {
    plant.must(print());
    expect(plant.ask({ type: 'readLabel', lot: 'A1', box: 'A1-001', payload: 'hello' })).toMatchObject({ refusal: { code: 'labelDiffers', field: 'code' } });
  });
});

it('a shipment says which it is, for which order and for whom', () => {
  labelledBox(plant, 'A1');
  for (const blank of ['shipment', 'order', 'consignee']) expect(plant.ask({ ...ship, [blank]: ' ' } as Command)).toMatchObject({ refusal: { code: 'identifierUnfit', field: blank } });
});
