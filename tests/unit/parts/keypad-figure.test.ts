import { describe, expect, it } from 'vitest';
import { decimalSignOf, figureTurned, figureWith, plainFigure } from '../../../kiosk/parts/keypad-figure.ts';
import { TypedRun } from '../../../kiosk/parts/typed-run.ts';

const rules = { decimalSign: ',', whole: false, signed: true, maxLength: 7 };
const typed = (keys: string, by = rules): string => keys.split('').reduce((text, key) => figureWith(text, key, by), '');

describe('a figure typed on the keypad', () => {
  it.each([
    { locale: 'en', sign: '.', source: 'Unicode CLDR through Intl' },
    { locale: 'de', sign: ',', source: 'Unicode CLDR through Intl' },
    { locale: 'es', sign: ',', source: 'Unicode CLDR through Intl' },
    { locale: 'cs', sign: ',', source: 'Unicode CLDR through Intl' },
  ])('shows $sign in $locale ($source)', ({ locale, sign }) => expect(decimalSignOf(locale)).toBe(sign));

  it.each([
    ['4,762', '4,762', 'as typed'],
    ['4.762', '4,762', 'a gauge types its own decimal sign'],
    ['4,7,62', '4,762', 'a second decimal sign cannot stand'],
    ['-4', '-4', 'minus in front'],
    ['4-', '4', 'minus behind cannot stand'],
    ['4a7', '47', 'letters cannot stand'],
    ['123456789', '1234567', 'no more than its length'],
  ])('%s shows %s: %s', (keys, shown) => expect(typed(keys)).toBe(shown));

  it('takes no decimal sign where whole numbers are asked and no minus where none is', () => {
    expect(typed('-4,5', { ...rules, whole: true, signed: false })).toBe('45');
  });

  it('turns its sign there and back', () => {
    expect(figureTurned('4,7')).toBe('-4,7');
    expect(figureTurned('-4,7')).toBe('4,7');
  });

  it.each([
    ['4,762', '4.762'],
    ['-,5', '-0.5'],
    ['4,', '4'],
    ['4,70', '4.70'],
    ['007', '007'],
    ['', null],
    ['-', null],
    [',', null],
    ['4,7,6', null],
  ])('%s is plainly %s', (text, plain) => expect(plainFigure(text)).toBe(plain));
});

describe('a run of typed keys', () => {
  it('gives back the figure from before a scanned code and stays foreign until a pause', () => {
    const run = new TypedRun();
    expect(run.hear(1000, '4,7')).toBe(false);
    expect(run.hear(1010, '4,70')).toBe(false);
    expect(run.disown()).toBe('4,7');
    expect(run.hear(1020, '4,7')).toBe(true);
    expect(run.hear(2000, '4,7')).toBe(false);
  });

  it('knows whether a key belongs to the run under way', () => {
    const run = new TypedRun();
    expect(run.isFresh(5)).toBe(false);
    run.hear(1000, '');
    expect(run.isFresh(1080)).toBe(true);
    expect(run.isFresh(1081)).toBe(false);
  });
});
