import { describe, expect, it } from 'vitest';
import { explainDesignation, formatDesignation, insertDimensions, insertLimits, readDesignation, readPositions, sizesNotInHand } from '../../../shared/carbide/index.ts';
import type { InsertDesignation } from '../../../shared/carbide/index.ts';

function read(text: string): InsertDesignation {
  const outcome = readDesignation(text);
  if (!outcome.ok) throw new Error(`${text}: ${JSON.stringify(outcome.problems)}`);
  return outcome.designation;
}
/** Position, text and fault of each problem. */
function problems(text: string): string[] {
  const outcome = readDesignation(text);
  return outcome.ok ? [] : outcome.problems.map(({ position, text: found, fault }) => `${position} ${found} ${fault}`);
}

describe('a designation that can be read', () => {
  it('takes blanks and lower case as they come', () => expect(read(' cnmg 12 04 08 ')).toEqual(read('CNMG120408')));
  it('reads a two-letter corner as a wiper, and edge and hand behind it', () => {
    expect(read('SEKN1203AFTN')).toMatchObject({ corner: { kind: 'wiper', angle: 'A', clearance: 'F' }, edge: 'T', hand: 'N' });
  });
  it('reads F and N behind a thickness by position: a wiper of 85° and 0°', () => expect(read('SNKN1204FN').corner).toEqual({ kind: 'wiper', angle: 'F', clearance: 'N' }));
  it('reads a hand without an edge', () => expect(read('CNMG120408R')).toMatchObject({ edge: null, hand: 'R' }));
  it('reads an edge without a hand', () => expect(read('CNMG120408E')).toMatchObject({ edge: 'E', hand: null }));
  it('reads a chamfer of 0.20 mm under 20° and a maker’s sign behind a dash', () => {
    expect(read('SNGN120412T02020-AB')).toMatchObject({ edge: 'T', chamfer: { widthMm: 0.2, angleDeg: 20 }, makersSign: 'AB' });
    expect(read('CNGA120408SN01025')).toMatchObject({ edge: 'S', hand: 'N', chamfer: { widthMm: 0.1, angleDeg: 25 } });
  });
  it('reads any kind of dash', () => expect(read('CNMG120408–pm').makersSign).toBe('PM'));
  it('reads the small radius 005 of newer editions', () => expect(insertDimensions(read('CCGT0602005')).cornerRadius?.nominalMm).toBe(0.05));
  it('explains every position, and the texts make up the designation again', () => {
    const text = 'TNGA160408SN01020-QX';
    expect(explainDesignation(read(text)).map((position) => (position.position === 13 ? '-' : '') + position.text).join('')).toBe(text);
    expect(explainDesignation(read(text)).map(({ position }) => position)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 13]);
  });
  it('carries the edition of its tables', () => expect(read('CNMG120408').tables).toEqual({ standard: 'ISO 1832', edition: 2017 }));
});

describe('a designation that cannot be', () => {
  it.each([
    ['CNMG12048', ['7 8 incomplete']], ['XNMG120408', ['1 X unknown']], ['CNIG120408', ['3 I unknown']], ['CNMG1204T8', ['7 T8 unknown']],
    ['CNMG130408', ['5 13 noSuchSize']], ['RCMT120408', ['7 08 roundHasNoCorner']], ['TNMG160499', ['7 99 radiusTooLarge']],
    ['FNMG120408', ['1 F shapeDropped']], ['CXMG120408', ['2 X unknown']], ['CNMI120408', ['4 I unknown']], ['CNMG1X0408', ['5 1X unknown']],
    ['CNMG120808', ['6 08 unknown']], ['CNMG12T408', ['6 T4 unknown']], ['CNMG1204QQ', ['7 QQ unknown']], ['CNMG120408Q', ['8 Q letterOfEarlierEdition']],
    ['CNMG120408X', ['8 X unknown']], ['CNMG120408EX', ['9 X unknown']], ['CNMG120408EN1', ['10 1 chamferWithoutEdge']], ['CNMG120408TN012', ['10 012 incomplete']],
    ['CNMG120408T02090', ['10 02090 noSuchChamfer']], ['CNMG120408T00020', ['10 00020 noSuchChamfer']], ['CNMG120408S01020L1', ['11 L1 notRead']],
    ['CNMG120408-', ['13  missing']], ['CNMG120408-£', ['13 £ unknown']],
    ['CNMG1204M0', ['7 M0 onlyRound']], ['RCMT0903M0', ['7 M0 diameterOfOtherSeries']], ['RCMT100300', ['7 00 diameterOfOtherSeries']], ['RCMT1204MO', ['7 MO unknown']],
    ['RCMT1204AF', ['7 AF roundHasNoCorner']], ['LNMG000408', ['5 00 noSuchSize']], ['SNMG001204', ['5 00 noSuchSize']],
    ['CNMGA120408', ['5 A tooManyLetters']], ['CNM120408', ['4  missing']], ['CNMG', ['5  missing', '6  missing', '7  missing']], ['CNMG1204', ['7  missing']],
    ['CNMG432', ['5 43 noSuchSize', '6 2 incomplete', '7  missing']],
    ['XXXX999999', ['1 X unknown', '2 X unknown', '3 X unknown', '6 99 unknown']],
  ])('%s: %j', (text, expected) => expect(problems(text)).toEqual(expected));

  it('names every position of an empty text', () => expect(problems('')).toEqual([1, 2, 3, 4, 5, 6, 7].map((position) => `${position}  missing`)));
  it('refuses an endless text', () => expect(problems(`CNMG120408-${'A'.repeat(500)}`)[0]).toMatch(/^13 /));
  it('says what might stand there', () => {
    const outcome = readDesignation('CNMG130499');
    expect(outcome.ok ? [] : outcome.problems.map(({ position, allowed }) => [position, allowed])).toEqual([[5, ['04', '05', '06', '08', '09', '12', '16', '19', '25', '32']]]);
    const tight = readDesignation('TNMG160499');
    expect(tight.ok ? [] : tight.problems[0]?.allowed).toContain('32');
  });
});

describe('what the digits leave open', () => {
  it('settles a round 06, 12 and 25 by the corner code', () => {
    expect(['RCMT0602M0', 'RCMT060200', 'RCMT1204M0', 'RCMT120400', 'RCMT2506M0', 'RCMT250600'].map((text) => insertDimensions(read(text)).inscribedCircle?.nominalMm)).toEqual([6, 6.35, 12, 12.7, 25, 25.4]);
  });
  it('asks for the circle of a rhombus 04 and takes the one that is chosen', () => {
    const designation = read('CCMT040204');
    expect(insertDimensions(designation)).toMatchObject({ inscribedCircle: null, circleUnknown: 'severalFit', controlDimension: null, noControlDimension: 'circleUnknown', edgeLengthMm: null });
    expect(insertDimensions(designation, 4.76).inscribedCircle?.exactMm).toBe(4.7625);
    expect(insertDimensions(designation, 5.56).inscribedCircle).toBeNull();
    expect(insertLimits(designation).d.tolerance).toEqual({ kind: 'notInHand', why: 'circleUnknown', rememberedMm: null });
    expect(insertLimits(designation, { chosenCircleMm: 4.76 }).d).toMatchObject({ lowerMm: 4.71, upperMm: 4.81 });
  });
  it('gives no circle, no m and no edge for a rectangle, but its longer side in whole millimetres', () => {
    expect(insertDimensions(read('LNMG150408'))).toMatchObject({ inscribedCircle: null, circleUnknown: 'notInCode', longSideWholeMm: 15, edgeLengthMm: null, noControlDimension: 'notInCode' });
  });
  it('gives no m for a wiper corner, and none for a round insert', () => {
    expect(insertDimensions(read('SEKN1203AFTN'))).toMatchObject({ controlDimension: null, noControlDimension: 'wiper', cornerRadius: null });
    expect(insertDimensions(read('RCMT1204M0'))).toMatchObject({ controlDimension: null, noControlDimension: 'round', cornerRadius: null, edgeLengthMm: null });
  });
  it('takes a sharp corner as radius 0', () => {
    // By hand: an equilateral triangle over d 9.525 is 1.5 · 9.525 high.
    expect(insertDimensions(read('TNMG160400')).controlDimension?.mm).toBeCloseTo(14.2875, 9);
  });
  it('says which sizes the plant must give limits for', () => {
    expect(sizesNotInHand(insertLimits(read('DNUG150608')))).toEqual(['d', 'm']);
    expect(sizesNotInHand(insertLimits(read('VNMG220408')))).toEqual(['m']);
    expect(insertLimits(read('VNMG220408')).m.tolerance).toEqual({ kind: 'notInHand', why: 'changedByEdition', rememberedMm: 0.2 });
    expect(sizesNotInHand(insertLimits(read('VNMG220408'), { givenMm: { m: 0.25 } }))).toEqual([]);
    expect(sizesNotInHand(insertLimits(read('LNGX150408')))).toEqual(['s']);
    expect(insertLimits(read('DNMG310608')).d.tolerance).toEqual({ kind: 'notInHand', why: 'sizeNotInTable', rememberedMm: null });
  });
});

describe('measured after coating', () => {
  it('adds twice the coating to d and s, and nothing to m (common practice)', () => {
    const [before, after] = [insertLimits(read('CNMG120408')), insertLimits(read('CNMG120408'), { measured: { when: 'afterCoating', coatingUm: 8 } })];
    expect([after.d.targetMm, after.s.targetMm, after.m.targetMm]).toEqual([12.716, 4.776, before.m.targetMm]);
    expect([after.d.lowerMm, after.d.upperMm]).toEqual([12.636, 12.796]);
  });
});

it('gives the same word for the same designation', () => expect(formatDesignation(read('sngn 12 04 12 t02020-ab'))).toBe('SNGN120412T02020-AB'));

describe('a designation half typed', () => {
  const told = (text: string) => readPositions(text).map(({ position, text: typed, meaning, problems: wrong }) => [position, typed, meaning?.kind ?? null, ...wrong.map(({ fault }) => fault)].join(' '));
  it('explains what stands there and asks for the rest', () => {
    expect(told('cn')).toEqual(['1 C shape', '2 N clearance', '3   missing', '4   missing', '5   missing', '6   missing', '7   missing']);
    expect(told('CNMG1')).toContain('5 1  incomplete');
  });
  it('puts each refusal under its own position and explains the others', () => {
    expect(told('CNIG130408EX')).toEqual(['1 C shape', '2 N clearance', '3 I  unknown', '4 G fixing', '5 13  noSuchSize', '6 04 thickness', '7 08 radius', '8 E edge', '9 X  unknown']);
  });
  it('says the size of a round insert before its corner is typed: both diameters fit', () => {
    const size = readPositions('RCMT1204').find(({ position }) => position === 5)?.meaning;
    expect(size?.kind === 'size' && size.dimensions.fittingCircles.map(({ nominalMm }) => nominalMm)).toEqual([12.7, 12]);
  });
  it('read wholly, says what the explanation says', () => {
    const designation = read('TNGA160408SN01020-QX');
    expect(readPositions('TNGA160408SN01020-QX').map(({ position, text, meaning }) => ({ position, text, meaning }))).toEqual(explainDesignation(designation));
  });
});
