import type { PowderFactor } from '../traveller/index.ts';

/** What the kiosk says about powder on its way to the press. Figures come in written. */
export const powderToPressWords = {
  gives: 'What pressing is given',
  loading: 'Working out what pressing is given',
  columns: { factor: 'From the test pieces', value: 'Mean', u: '± U (k = 2)' },
  from: { measured: 'measured on this batch', weighted: 'weighted from the parts' },
  units: { linearShrinkagePercent: '%', widthShrinkagePercent: '%', heightShrinkagePercent: '%', sinteredDensityGPerCm3: 'g/cm³', binderPercent: '%', furtherLossPercent: '%' } satisfies Record<PowderFactor, string>,
  even: 'The height was not measured: shrinkage is taken as even, and no green height is judged by it.',
  missing: (batch: string, factor: string) => ({ happened: `${batch} has no result for ${factor}.`, next: 'Without it no lot of this powder is pressed. Have it measured at the lab gate of the batch.' }),
  targets: (grade: string) => `Press targets of every product of ${grade}`,
  targetColumns: { product: 'Product', weight: 'Press weight', height: 'Green height', die: 'Die across', how: 'How?' },
  noProduct: 'No product of this grade is in the catalogue.',
  notStated: '–',
  how: 'How?', factor: (k: string) => `factor ${k}`,
  target: { label: 'Press to', weight: 'Weight', height: 'Green height', heightOf: (mm: string) => `green height ${mm}`, dieFactor: 'Die factor', dieFactorOf: (k: string) => `die factor ${k}`, die: (mm: string) => `die ${mm} mm`, limits: (lower: string, upper: string) => `${lower} … ${upper}`, outdated: (weight: string) => `The powder’s factors were corrected after this lot was pressed: the target would now be ${weight} g. A quality engineer decides about it.` },
  blend: {
    key: 'Blend batches', title: 'Blend powder batches', grade: 'Grade', number: 'Number of the blend', barrels: 'Barrels it is filled into', from: 'Taken from', left: (kg: string) => `${kg} kg left`, kg: (batch: string) => `kg of ${batch}`,
    none: 'Fewer than two batches of this grade are released and have powder left.', live: 'What the blend would give pressing', together: (kg: string) => `${kg} kg together`, notYet: 'Enter what is taken of two batches or more.',
    rule: 'Binder and shrinkages are weighted by mass, density by the volume the parts sinter to. The blend has a lab gate of its own: what is measured there counts before this.',
    open: 'Blend', tooMuch: 'More than is left.', unfit: 'A mass above 0, to the gram.', busy: 'Under way',
  },
  facts: { left: 'Powder left', kg: (left: string, all: string) => `${left} of ${all} kg`, blendedFrom: 'Blended from', blendedInto: 'Blended into', share: (batch: string, kg: string) => `${batch} (${kg} kg)`, across: 'Shrinkage across', along: 'along pressing' },
  why: {
    heading: (product: string) => `How? Press target of ${product}`,
    labels: { weight: 'Weight', height: 'Green height', limits: 'Its limits', die: 'Die', density: 'Green density', room: 'Room for the weight', uncertainty: 'Known to', powder: 'Powder', part: 'Part' },
    weight: 'm = V · ρ / ((1 − b)(1 − q))', weightPut: (v: string, rho: string, b: string, q: string, m: string) => `${v} mm³ · ${rho} g/cm³ / ((1 − ${b} %)(1 − ${q} %)) = ${m} g`,
    height: 'h green = h / (1 − S along)', heightPut: (h: string, s: string, green: string) => `${h} mm / (1 − ${s} %) = ${green} mm`,
    limitsPut: (lower: string, greenLower: string, upper: string, greenUpper: string) => `${lower} → ${greenLower} mm, ${upper} → ${greenUpper} mm, each over (1 − S along)`,
    limitsFrom: { card: 'Sintered limits as the product’s card states them.', designation: 'Sintered limits by the tolerance class of the designation; they hold where nothing is ground off.' },
    noLimits: 'The product states no limits of its sintered thickness.',
    die: 'K = 1 / (1 − S across), die = size across · K', diePut: (s: string, k: string, across: string | null, die: string | null) => `K = 1 / (1 − ${s} %) = ${k}${across === null || die === null ? '' : `; ${across} mm · ${k} = ${die} mm`}`,
    density: 'ρ green = m / V green, V green = V / ((1 − S₁)(1 − S₂)(1 − S₃))', densityPut: (rho: string) => `${rho} g/cm³`,
    room: (lower: string, upper: string) => `${lower} … ${upper} g: at one density and one die the weight goes with the height, m / m₀ = h / h₀. The gate judges by the plan’s ± %, where it states one.`,
    uncertainty: (weight: string, height: string, die: string) => `± ${weight} g, ± ${height} mm, die factor ± ${die} (k = 2): from the spread of the lab’s readings alone; that of the gauges is not in it.`,
    measured: (batch: string) => `${batch}: means of the lab’s readings as they stand, corrections included`, weighted: (factors: string) => `weighted by mass from the parts: ${factors}`, share: (batch: string, kg: string) => `${batch}, ${kg} kg`,
    even: 'Taken as even in every direction: the height was not measured.',
    sources: { balance: 'Mass balance and shrinkage by direction', usual: 'Linear shrinkage of hardmetal is usually 17 to 20 %', gum: 'JCGM 100:2008, 5.1.2 (propagation of uncertainty)', blend: 'Weights of a blend: binder by mass balance, density by the volumes added, shrinkage by mass' },
  },
};
export type PowderToPressWords = typeof powderToPressWords;
