import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatFor, formatOfTag, localeFor, parseCount, parseNumber, parseNumberWith } from '../../../shared/words/index.ts';

describe('numbers and days', () => {
  it('decimals are fixed where they are asked for, and free where they are not', () => {
    const english = formatFor('en', 'UTC');
    expect([english.number(4.7, 3), english.number(0.65), english.number(2.5), english.count(12000), english.number(1e-9)]).toEqual(['4.700', '0.65', '2.5', '12,000', '0.000000001']);
    expect(formatOfTag('de-DE').number(4.7, 3)).toBe('4,700');
    expect(formatOfTag('de-DE').decimalSign).toBe(',');
  });

  it('a bare day stays that day in every zone, and a text that is no time comes back as it is', () => {
    expect(formatFor('en', 'America/Los_Angeles').date('2026-03-05')).toBe('5 Mar 2026');
    expect(formatFor('en', 'Europe/Prague').dateTime('2026-03-05T23:30:00.000Z')).toBe('6 Mar 2026, 00:30');
    expect(formatFor('en').date('soon')).toBe('soon');
  });

  it('a language that is not held is answered in English', () => {
    expect([localeFor('en-GB'), localeFor('xx'), localeFor('')]).toEqual(['en', 'en', 'en']);
  });
});

describe('what a person typed', () => {
  it.each([
    ['4.762', 4.762], ['4,762', 4.762], [' -3 ', -3], ['−0,5', -0.5], ['+4', 4], ['.5', 0.5], ['5.', 5], ['1,234.5', 1234.5], ['1,234,567', 1234567], ['0', 0],
    ['', null], [' ', null], ['-', null], ['.', null], [',', null], ['1e3', null], ['0x10', null], ['1 000', null], ['1,2,3', null], ['1.2.3', null], ['1.234,5', null], ['12,34.5', null], ['4.7mm', null],
    ['NaN', null], ['Infinity', null], ['--1', null], ['1-', null], ['٣', null],
  ])('%j is %s', (text, value) => expect(parseNumber(text, 'en')).toBe(value));

  it('groups of three belong to the language', () => {
    expect(parseNumberWith('1.234,5', ',')).toBe(1234.5);
    expect(parseNumberWith('1,234.5', ',')).toBeNull();
  });

  it('a finite number written plainly is read back exactly, with comma and with point', () => {
    fc.assert(fc.property(fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e15, max: 1e15 }), fc.integer({ min: 0, max: 6 }), (value, decimals) => {
      const text = value.toFixed(decimals);
      expect(parseNumber(text, 'en')).toBe(Number(text));
      expect(parseNumber(text.replace('.', ','), 'en')).toBe(Number(text));
    }), { seed: 31 });
  });

  it('any text is a finite number or null', () => {
    fc.assert(fc.property(fc.string({ unit: fc.constantFrom(...'0123456789.,-+ eE') , maxLength: 12 }), (text) => {
      const value = parseNumber(text, 'en');
      expect(value === null || Number.isFinite(value)).toBe(true);
      if (value !== null) expect(text).toMatch(/\d/);
    }), { seed: 32 });
  });

  it('a count is digits only', () => {
    expect([parseCount(' 80 '), parseCount('0'), parseCount(''), parseCount('8.0'), parseCount('1,000'), parseCount('-1')]).toEqual([80, 0, null, null, null, null]);
  });
});
