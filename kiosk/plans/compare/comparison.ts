import { choiceText, FIRST_CHOICES, lettered, readChoice, type Choice } from './choice.ts';

export const CURVES = ['acceptance', 'aoq', 'asn', 'ati'] as const;
export type CurveName = (typeof CURVES)[number];
export const MODELS = ['binomial', 'hypergeometric', 'poisson'] as const;
export type ModelName = (typeof MODELS)[number];
export const SWITCHING_RULES = ['ISO 2859-1', 'MIL-STD-105E'] as const;

/** What a page of the comparison shows besides its plans: texts as typed. */
export interface Settings {
  readonly curve: CurveName;
  readonly model: ModelName;
  /** Right end of the axis, percent; empty: as far as the plans need. */
  readonly upTo: string;
  /** Quality that is expected, percent. */
  readonly expected: string;
  readonly lots: string;
  readonly minutes: string;
  readonly destructive: boolean;
  readonly switching: (typeof SWITCHING_RULES)[number];
  readonly reduced: boolean;
  readonly spread: string;
  /** Lots that pass uninspected before discontinued inspection goes on. */
  readonly resumeAfter: string;
  readonly seed: string;
  /** Letter of the plan whose year is simulated. */
  readonly simulated: string;
  /** The plan page it was opened from, as `PLAN/version`; empty: none. */
  readonly from: string;
}
export interface Comparison { readonly choices: readonly Choice[]; readonly settings: Settings }

export const STANDARD_SETTINGS: Settings = {
  curve: 'acceptance', model: 'binomial', upTo: '', expected: '0.5', lots: '250', minutes: '0.5', destructive: false, switching: 'ISO 2859-1', reduced: true, spread: '0', resumeAfter: '10', seed: '1', simulated: 'A', from: '',
};

/** Reads the whole comparison from an address; what is missing or unknown is the usual. */
export function readComparison(query: URLSearchParams): Comparison {
  const choices = query.getAll('plan').flatMap((text) => readChoice(text) ?? []).slice(0, 4);
  const usual = STANDARD_SETTINGS;
  const text = (name: keyof Settings, otherwise: string): string => (query.get(name) ?? otherwise).slice(0, 40);
  const oneOf = <T extends string>(known: readonly T[], name: keyof Settings, otherwise: T): T => known.find((each) => each === query.get(name)) ?? otherwise;
  const flag = (name: keyof Settings, otherwise: boolean): boolean => (query.get(name) === null ? otherwise : query.get(name) === 'yes');
  return {
    choices: choices.length === 0 ? FIRST_CHOICES : choices,
    settings: {
      curve: oneOf(CURVES, 'curve', usual.curve), model: oneOf(MODELS, 'model', usual.model), upTo: text('upTo', usual.upTo), expected: text('expected', usual.expected), lots: text('lots', usual.lots),
      minutes: text('minutes', usual.minutes), destructive: flag('destructive', usual.destructive), switching: oneOf(SWITCHING_RULES, 'switching', usual.switching), reduced: flag('reduced', usual.reduced),
      spread: text('spread', usual.spread), resumeAfter: text('resumeAfter', usual.resumeAfter), seed: text('seed', usual.seed), simulated: text('simulated', usual.simulated), from: text('from', usual.from),
    },
  };
}

/** The address of a comparison; what is as usual is left out, so that it stays short. */
export function comparePath({ choices, settings }: Comparison): string {
  const query = new URLSearchParams(lettered(choices).map((choice) => ['plan', choiceText(choice)]));
  for (const [name, value] of Object.entries(settings)) {
    const usual = Object.entries(STANDARD_SETTINGS).find(([each]) => each === name)?.[1];
    if (value !== usual) query.set(name, typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value));
  }
  return `/plans/compare?${query.toString()}`;
}
