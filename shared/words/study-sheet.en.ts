/** The words of a gauge study, on paper and on the page of its result. */
export const studyWords = {
  title: (id: string) => `Gauge study ${id}`,
  sources: { part: 'Part', person: 'Person', interaction: 'Person × part', repeatability: 'Repeatability' },
  components: { repeatability: 'Repeatability', person: 'Between people', interaction: 'Person × part', reproducibility: 'Reproducibility', gauge: 'Gauge', part: 'Between parts', total: 'All readings' },
  models: {
    withInteraction: 'People differ from part to part: the interaction is kept.', pooled: 'People do not differ from part to part as far as can be seen: the interaction is pooled into repeatability.', onePerson: 'One person measured: reproducibility cannot be told.',
  },
  anova: 'Analysis of variance', parts: 'Components of spread',
  anovaColumns: { source: 'Source', df: 'Degrees of freedom', squares: 'Sum of squares', meanSquare: 'Mean square', f: 'F', p: 'p' },
  componentColumns: { name: 'Component', s: (unit: string) => `s, ${unit}`, interval: (percent: string) => `${percent} % limits of s`, variance: '% of variance', study: '% of spread', tolerance: '% of tolerance' },
  readingColumns: { part: 'Part', person: 'Person', trial: 'Trial', value: (unit: string) => `Value, ${unit}` },
  negative: (names: string) => `${names}: the estimate came out below 0 and is set to 0. Such spread is too small for this study to see.`,
  noTest: 'no spread to test against',
  below: (value: string) => `under ${value}`,
  total: 'Total',
  categories: (whole: number, written: string): string => (whole < 2
    ? `Distinct categories: ${written}. The gauge cannot tell these parts apart; it says little more than that they are parts.`
    : whole < 5 ? `Distinct categories: ${written}. The gauge sorts these parts into ${written} groups: enough for a coarse sorting, not for steering production.`
    : `Distinct categories: ${written}. The gauge tells ${written} groups of these parts apart: enough to steer by.`),
  noCategories: 'Distinct categories cannot be told: the gauge showed no spread at all, so its step is coarser than its own spread.',
  fitness: {
    fit: (percent: string) => `The gauge makes ${percent} % of the spread: under 10 %, fit by common practice.`,
    conditional: (percent: string) => `The gauge makes ${percent} % of the spread: between 10 and 30 %, fit for uses that bear it, by common practice.`,
    unfit: (percent: string) => `The gauge makes ${percent} % of the spread: over 30 %, not fit for these parts, by common practice.`,
  },
  ofTolerance: (percent: string) => `Against the tolerance it is ${percent} %.`,
  bias: (bias: string, unit: string, low: string, high: string, percent: string) => `The gauge reads ${bias} ${unit} off the reference; ${percent} % limits ${low} to ${high} ${unit}.`,
  biases: 'Bias at each reference',
  onAverage: (bias: string, unit: string, low: string, high: string, percent: string) => `Over the whole range it reads ${bias} ${unit} off on average; ${percent} % limits ${low} to ${high} ${unit}.`,
  biasTold: { seen: 'The limits leave 0 out: the bias is more than chance.', unseen: 'The limits take 0 in: no bias can be told from chance.' },
  line: (slope: string, intercept: string) => `Bias = ${intercept} + ${slope} × reference`,
  lineTold: { seen: 'The slope is more than chance: the bias changes over the range.', unseen: 'No slope can be told from chance.' },
  biasColumns: { reference: (unit: string) => `Reference, ${unit}`, n: 'n', mean: 'Mean', bias: 'Bias', limits: (percent: string) => `${percent} % limits`, p: 'p' },
  lineColumns: { name: 'Line', value: 'Value', standardError: 'Standard error', limits: (percent: string) => `${percent} % limits`, p: 'p' },
  lineNames: { slope: 'Slope', intercept: 'Intercept', meanBias: 'Mean bias' },
  about: (characteristic: string, gauge: string, parts: string, people: string, trials: string) => `${characteristic} with gauge ${gauge}: ${parts} parts, measured by ${people}, ${trials} times each in blind order`,
  tolerance: (value: string) => `Tolerance ${value}`,
  opened: (moment: string) => `Begun ${moment}`,
  demo: 'INVENTED DEMO DATA',
  page: (page: number, of: number) => `Page ${page} of ${of}`,
  plot: { title: 'Readings by part and person', x: 'Part', y: (characteristic: string, unit: string) => `${characteristic}, ${unit}` },
};
