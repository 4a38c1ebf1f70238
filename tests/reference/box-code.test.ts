import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OutsideDomain } from '../../shared/ground/outside-domain.ts';
import { boxCodeFault, buildBoxCode, readBoxCode, type BoxCodeFields } from '../../shared/traveller/box-code/index.ts';

// The two byte strings are derived: invented fields put by hand into the structure of ISO/IEC 15434 format 06 with the identifiers of ANSI
// MH10.8.2 (both structures seen). As Data Matrix they went through an encoder and a decoder of different makers unharmed.
const examples = [
  {
    name: 'example A, 73 bytes',
    fields: { item: 'CNMG120408-M7', lot: 'L26-004217', serial: 'B26004217-013', quantity: 10, producedOn: '2026-11-18', country: 'PT' },
    hex: `5b 29 3e 1e 30 36 1d 31 50 43 4e 4d 47 31 32 30 34 30 38 2d 4d 37 1d 31 54 4c 32 36 2d 30 30 34
      32 31 37 1d 53 42 32 36 30 30 34 32 31 37 2d 30 31 33 1d 51 31 30 1d 31 36 44 32 30 32 36 31 31
      31 38 1d 34 4c 50 54 1e 04`,
    length: 73,
  },
  {
    name: 'example B, 59 bytes',
    fields: { item: 'DCGT11T304FN-F2', lot: 'L26-004219', quantity: 10, packedOn: '2026-11-20', country: 'PT' },
    hex: `5b 29 3e 1e 30 36 1d 31 50 44 43 47 54 31 31 54 33 30 34 46 4e 2d 46 32 1d 31 54 4c 32 36 2d 30
      30 34 32 31 39 1d 51 31 30 1d 39 44 32 30 32 36 31 31 32 30 1d 34 4c 50 54 1e 04`,
    length: 59,
  },
] as const;

describe('two examples put together by hand (derived; ISO/IEC 15434 and ANSI MH10.8.2, structures seen)', () => {
  it.each(examples)('$name is built byte for byte', ({ fields, hex, length }) => {
    const bytes = Buffer.from(hex.replace(/\s/g, ''), 'hex');
    expect(bytes.length).toBe(length);
    expect(Buffer.from(buildBoxCode(fields), 'latin1').toString('hex')).toBe(bytes.toString('hex'));
    expect(readBoxCode(bytes.toString('latin1'))).toEqual({ ok: true, fields });
  });
});

const GS = '\x1d';
const RS = '\x1e';
const EOT = '\x04';
const good = ['1PCNMG120408-M7', '1TL26-004217', 'SB1', 'Q10', '9D20261118', '4LPT'];
const frame = (fields: readonly string[]): string => `[)>${RS}06${GS}${fields.join(GS)}${RS}${EOT}`;
const instead = (at: number, text: string): string => frame(good.map((field, i) => (i === at ? text : field)));

describe('the structure of the envelope', () => {
  it.each([
    { rule: 'header [ ) > RS opens the message', shape: /^\[\)>\x1e/, source: 'ISO/IEC 15434, seen on two independent pages' },
    { rule: 'format 06 is followed by GS', shape: /^.{4}06\x1d/, source: 'ISO/IEC 15434 format 06 = MH10.8.2 identifiers, seen' },
    { rule: 'no GS stands before RS', shape: /[^\x1d]\x1e\x04$/, source: 'ISO/IEC 15434, seen; same shape as the example in ANSI MH10.8.2' },
    { rule: 'one record only', shape: /^[^\x1e]*\x1e[^\x1e]*\x1e\x04$/, source: 'plant rule: one box, one record' },
    { rule: 'Q is numeric', shape: /\x1dQ[0-9]+\x1d/, source: 'ANSI MH10.8.2 Q, an1 + n.., seen' },
    { rule: '9D holds a day as YYYYMMDD', shape: /\x1d9D[0-9]{8}\x1d/, source: 'ANSI MH10.8.2 9D, form by agreement, seen' },
    { rule: '4L holds two letters', shape: /\x1d4L[A-Z]{2}\x1e/, source: 'ANSI MH10.8.2 4L, ISO 3166-1, seen' },
  ])('$rule ($source)', ({ shape }) => {
    expect(buildBoxCode({ item: 'A', lot: 'B', serial: 'C', quantity: 1, packedOn: '2026-11-18', country: 'PT' })).toMatch(shape);
  });

  it('reads back whatever can be built, and builds only characters a keyboard of any layout passes on', () => {
    const name = (most: number) => fc.stringMatching(new RegExp(`^[A-Z0-9-]{1,${most}}$`));
    const day = fc.date({ min: new Date('1900-01-01'), max: new Date('2199-12-31'), noInvalidDate: true }).map((d) => d.toISOString().slice(0, 10));
    const fields: fc.Arbitrary<BoxCodeFields> = fc.record({
      item: name(25), lot: name(20), quantity: fc.integer({ min: 1, max: 99_999_999 }), packedOn: day,
    }).chain((must) => fc.record({ serial: name(20), producedOn: day, country: fc.stringMatching(/^[A-Z]{2}$/) }, { requiredKeys: [] })
      .map((may) => ({ ...must, ...may })));
    fc.assert(fc.property(fields, (given) => {
      const code = buildBoxCode(given);
      expect(code).toMatch(/^\[\)>\x1e06[A-Z0-9\x1d-]+\x1e\x04$/);
      expect(readBoxCode(code)).toEqual({ ok: true, fields: given });
    }));
  });

  it('refuses random text, and of a code that lost one character reads no more than stands there', () => {
    fc.assert(fc.property(fc.nat(frame(good).length - 1), (at) => {
      const whole = frame(good);
      const damaged = whole.slice(0, at) + whole.slice(at + 1);
      const read = readBoxCode(damaged);
      if (read.ok) expect(buildBoxCode(read.fields)).toBe(damaged);
    }));
    fc.assert(fc.property(fc.string({ unit: 'binary' }), (text) => {
      expect(readBoxCode(text).ok).toBe(false);
    }));
  });
});

// Every way in which a payload can break the structure of ISO/IEC 15434 and the forms of its identifiers (derived).
describe('a bad code is refused with its reason', () => {
  it.each([
    { bad: 'EOT is missing', text: frame(good).slice(0, -1), why: { code: 'noEndOfTransmission' } },
    { bad: 'GS stands before RS at the end', text: frame([...good, '']), why: { code: 'separatorBeforeTrailer' } },
    { bad: '06 stands without GS', text: frame(good).replace(`06${GS}`, '06'), why: { code: 'noSeparatorAfterFormat' } },
    { bad: 'the quantity is Q1O with a letter', text: instead(3, 'Q1O'), why: { code: 'quantityNotWhole', value: '1O' } },
    { bad: 'the day is 16D20261345', text: instead(4, '16D20261345'), why: { code: 'noSuchDay', identifier: '16D', value: '20261345' } },
    { bad: 'an identifier stands twice', text: frame([...good, '1TL26-004218']), why: { code: 'identifierTwice', identifier: '1T' } },
    { bad: 'an identifier is in lower case', text: instead(1, '1tL26-004217'), why: { code: 'identifierInLowerCase', identifier: '1t' } },
    { bad: '1T is empty', text: instead(1, '1T'), why: { code: 'emptyValue', identifier: '1T' } },
    { bad: 'two records stand in one message', text: `[)>${RS}06${GS}${good.join(GS)}${RS}06${GS}${good.join(GS)}${RS}${EOT}`, why: { code: 'severalRecords' } },
    { bad: 'two messages run on', text: frame(good) + frame(good), why: { code: 'severalRecords' } },
    { bad: 'a keyboard wedge lost every separator', text: `[)>06${good.join('')}`, why: { code: 'separatorsLost' } },
    { bad: 'a keyboard wedge lost the GS only', text: frame(good).replaceAll(GS, ''), why: { code: 'separatorsLost' } },
    { bad: 'a keyboard wedge lost the GS between fields', text: `[)>${RS}06${GS}${good.join('')}${RS}${EOT}`, why: { code: 'separatorsLost' } },
    { bad: 'it is format 05', text: frame(good).replace('06', '05'), why: { code: 'formatIsNot06', format: '05' } },
    { bad: 'RS is missing before EOT', text: frame(good).replace(RS + EOT, EOT), why: { code: 'noFormatTrailer' } },
    { bad: 'text follows the end', text: `${frame(good)}\r`, why: { code: 'textAfterEnd' } },
    { bad: 'a plain lot number was scanned', text: 'L26-004217', why: { code: 'noMessageHeader' } },
    { bad: 'nothing was scanned', text: '', why: { code: 'noMessageHeader' } },
    { bad: 'the lot is missing', text: frame(good.filter((f) => !f.startsWith('1T'))), why: { code: 'identifierMissing', identifier: '1T' } },
    { bad: 'no day stands', text: frame(good.filter((f) => !f.startsWith('9D'))), why: { code: 'identifierMissing', identifier: '9D' } },
    { bad: 'a field is empty', text: instead(2, ''), why: { code: 'emptyField' } },
    { bad: 'a field is an order number', text: instead(2, 'K4711'), why: { code: 'identifierNotOurs', text: 'K4711' } },
    { bad: 'the lot holds a slash', text: instead(1, '1TL26/4217'), why: { code: 'characterNotAllowed', identifier: '1T', character: '/' } },
    { bad: 'the lot has 21 characters', text: instead(1, `1T${'L'.repeat(21)}`), why: { code: 'valueTooLong', identifier: '1T', most: 20, length: 21 } },
    { bad: 'the quantity has nine digits', text: instead(3, 'Q123456789'), why: { code: 'quantityNotWhole', value: '123456789' } },
    { bad: 'the country has three letters', text: instead(5, '4LPRT'), why: { code: 'countryNotTwoLetters', value: 'PRT' } },
    { bad: 'the day is 29 February of 2100', text: instead(4, '9D21000229'), why: { code: 'noSuchDay', identifier: '9D', value: '21000229' } },
  ])('$bad', ({ text, why }) => {
    expect(readBoxCode(text)).toEqual({ ok: false, why });
  });

  it.each([
    { why: 'a day without dashes', fields: { packedOn: '20261118' } },
    { why: 'a space in the item', fields: { item: 'CNMG 120408' } },
    { why: 'half a piece', fields: { quantity: 1.5 } },
    { why: 'no pieces', fields: { quantity: 0 } },
    { why: 'more pieces than eight digits', fields: { quantity: 1e21 } },
  ])('$why is named before building, and building throws at the programmer', ({ fields }) => {
    const given = { item: 'CNMG120408', lot: 'L1', quantity: 10, packedOn: '2026-11-18', ...fields };
    expect(boxCodeFault(given)).not.toBeNull();
    expect(() => buildBoxCode(given)).toThrow(OutsideDomain);
  });
});
