import { planCompareWords } from '../../../shared/words/plan-compare.en.ts';
import { readNumber } from '../../desk/show.ts';
import { FIELDS_OF, type Choice, type FieldName } from './choice.ts';

const wrong = planCompareWords.wrong;
export type Faults = Partial<Readonly<Record<FieldName, string>>>;
/** The numbers of a choice: percentages as typed, risks as fractions. Only those of its rule are sound. */
export interface Numbers { readonly lotSize: number; readonly lqPercent: number; readonly consumerRisk: number; readonly p1Percent: number; readonly producerRisk: number; readonly p2Percent: number }

/** Reads the typed texts of a choice, or says at each field what is wrong with it. */
export function readNumbers({ rule, texts }: Choice): { readonly numbers: Numbers; readonly faults: Faults } {
  const number = (field: FieldName): number => numberOf(texts[field]) ?? Number.NaN;
  const numbers = { lotSize: number('lot'), lqPercent: number('lq'), consumerRisk: number('consumerRisk') / 100, p1Percent: number('p1'), producerRisk: number('producerRisk') / 100, p2Percent: number('p2') };
  const asked = new Set<FieldName>(FIELDS_OF[rule]);
  const faults = new Map<FieldName, string>();
  const check = (field: FieldName, sound: boolean, said: string): void => {
    if (asked.has(field) && !sound && !faults.has(field)) faults.set(field, said);
  };
  const percent = (value: number): boolean => value > 0 && value < 100;
  check('lot', Number.isInteger(numbers.lotSize) && numbers.lotSize >= 1 && numbers.lotSize <= 1_000_000_000, wrong.lot);
  if (rule === 'variables' || rule === 'variablesPoints') check('lot', numbers.lotSize >= 3, planCompareWords.lotTooSmall);
  check('lq', percent(numbers.lqPercent), wrong.percent);
  check('p1', percent(numbers.p1Percent), wrong.percent);
  check('p2', percent(numbers.p2Percent), wrong.percent);
  check('p2', numbers.p2Percent > numbers.p1Percent, wrong.points);
  check('consumerRisk', percent(100 * numbers.consumerRisk), wrong.risk);
  check('producerRisk', percent(100 * numbers.producerRisk), wrong.risk);
  check('consumerRisk', !asked.has('producerRisk') || numbers.consumerRisk + numbers.producerRisk < 1, wrong.risks);
  return { numbers, faults: Object.fromEntries(faults) };
}

/** A typed number; texts of an address have a decimal point whatever the language. */
export function numberOf(text: string): number | null {
  return /^\d+(\.\d+)?$/.test(text.trim()) ? Number(text) : readNumber(text);
}

/** A typed text as it goes into the address: sound numbers with a point and without groups, so that everybody reads the same; others as they are. */
export function settled(text: string): string {
  const value = readNumber(text);
  return value === null || !Number.isFinite(value) ? text.trim() : plain(value);
}
// A very small number would be written with an exponent, which no field reads.
const plain = (value: number): string => (Math.abs(value) >= 1e-6 || value === 0 ? String(value) : value.toFixed(12).replace(/0+$/, ''));
