import { describe, expect, it } from 'vitest';
import { words } from '../../../shared/words/index.ts';
import { CAUTIONS } from '../../../shared/traveller/index.ts';
import type { Lot } from '../../../shared/traveller/index.ts';
import { oneFound, sampleDemands, sampleResults, sampleSlips, signature, verdictOfAll, verdictOfOne } from './sample-slips.ts';

const english = words('en', 'UTC');
/** What betrays a sentence that was put together wrongly. */
const UNSAID = /undefined|NaN|\[object|null|\$\{|  |^\s|\s$/;

describe('slips', () => {
  it.each(Object.values(sampleSlips).map((body) => [body.type, body] as const))('%s has a sentence and sound lines', (_, body) => {
    for (const reader of [undefined, { names: { 'P-07': 'V. Test' } }]) {
      const sentence = english.slipSentence({ body }, reader);
      expect(sentence.length).toBeGreaterThan(3);
      for (const text of [sentence, ...english.slipLines({ body }, reader)]) expect(text).not.toMatch(UNSAID);
    }
  });

  it('a verdict on one characteristic says what it rests on', () => {
    expect(english.slipSentence({ body: sampleSlips.verdictGiven })).toBe('Accepted: 2 found in 80, accept to 5 (letter J, normal, AQL 2.5)');
    expect(english.slipLines({ body: sampleSlips.verdictGiven }, { names: { 'P-07': 'V. Test' } })).toEqual(['Worked by V. Test']);
  });

  it('a verdict on several characteristics names what failed, and one line a characteristic follows', () => {
    expect(english.verdictSentence(verdictOfAll)).toBe('Rejected: Characteristic limits: 2 of 5 outside 4.710 … 4.810 mm');
    expect(english.verdictLines(verdictOfAll)).toHaveLength(sampleResults.length);
    expect(english.verdictLines(verdictOfOne)).toEqual([]);
  });

  it('names, units and kinds come from the subject where it is at hand', () => {
    const { gate } = sampleSlips.gateOpened;
    const record = { id: gate.id, name: gate.name, workedOn: 'lot', bench: gate.bench, status: 'open', attempt: 1, original: true, plan: gate, lotSize: 1000, seed: 'a', work: [], verdicts: [], sorted: [] } as const;
    const subject: Pick<Lot, 'gates'> = { gates: [record] };
    const body = { ...sampleSlips.findingRecorded, characteristic: 'look' };
    expect(english.slipSentence({ body }, { subject: { ...emptyLot, ...subject } })).toBe('Found: Chipped edge (major), 2 pieces');
    expect(english.slipSentence({ body })).toBe('Found: chip (major), 2 pieces');
  });
});

const emptyLot: Lot = {
  kind: 'lot', id: 'L26-0417', stream: 'lot:L26-0417', version: 1, openedAt: '', lastAt: '', demo: true, gates: [], holds: [], corrections: [], ended: null,
  product: sampleSlips.lotOpened.product, plan: 'ROUTE-A', planVersion: 1, batch: 'B26-031', order: null, trayCapacity: 100,
  balance: { opened: 1000, destroyed: 0, scrapped: 0, splitOff: 0, boxed: 0, returned: 0 }, press: sampleSlips.lotOpened.press, pressOutdated: null, splitFrom: null, splitInto: [], charges: [],
  concessions: [], release: null, releases: 0, boxes: [],
};

describe('demands, places and results', () => {
  it('each way of asking has its sentence', () => {
    expect(sampleDemands.map((demand) => english.demandSentence(demand))).toEqual([
      'Take 80 pieces of 1,000: letter J, normal, AQL major 0.65 · minor 2.5',
      'Measure 5 pieces of 40, 4.710 … 4.810 mm: s-method, letter D, normal, AQL 1',
      'Nothing: this lot is passed over after 10 accepted in a row (L26-0401 and L26-0409); one lot in 4 is inspected',
      'Measure 4 samples from 2 barrels: each to lie within 4.710 … 4.810 mm',
      'Weigh every one of 1,000 pieces: 4.710 … 4.810 mm',
      'Look at 5 pieces each time 500 are made: 2 looks, accept none',
      'Rate 1 test piece of the charge: accepted to A02',
      'Confirm: The press is cleared',
    ]);
  });

  it('each kind of place has its sentence', () => {
    expect(english.placeSentence({ at: 'tray', piece: 212, tray: 3, position: 12 })).toBe('Tray 3, position 12');
    expect(english.placeSentence({ at: 'barrel', barrel: 7, nth: 2 })).toBe('Barrel 7, sample 2');
    expect(english.placeSentence({ at: 'position', position: 'Middle', nth: 1 })).toBe('Middle, test piece 1');
  });

  it('each way of judging has its sentence', () => {
    for (const result of sampleResults) expect(english.resultSentence(result)).not.toMatch(UNSAID);
    expect(english.resultSentence(oneFound)).toBe('2 found in 80, accept to 5 (letter J, normal, AQL 2.5)');
  });

  it('two classes are told apart, and pieces beyond a class are said to be kept', () => {
    const [attributes] = oneFound.detail.by === 'attributes' ? oneFound.detail.classes : [];
    if (attributes === undefined) throw new Error('the sample has no class');
    const detail = { by: 'attributes' as const, classes: [{ ...attributes, class: 'critical' as const, found: 0, beyond: 1 }, attributes] };
    expect(english.resultSentence({ ...oneFound, detail })).toBe(
      'critical 0 found in 80, accept to 5 (letter J, normal, AQL 2.5); 1 more beyond the first 80, kept but not counted · minor 2 found in 80, accept to 5 (letter J, normal, AQL 2.5)',
    );
  });

  it('a signature says who, as what and when', () => {
    expect(english.signatureSentence(signature)).toBe('Released by R. Test (P-02), Releaser, 5 Mar 2026, 06:40');
  });
});

describe('cautions', () => {
  it('every one is a calm line that defers to the site, without a number that could be read as a permission', () => {
    for (const key of CAUTIONS) {
      const { text, rule } = english.caution({ caution: key, text: null });
      expect(text.length).toBeLessThan(130);
      expect(text).not.toMatch(/\d|!/);
      expect(rule).toContain('site’s rules and safety data sheets');
    }
  });
});
