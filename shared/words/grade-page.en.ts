/** The page on which a grade is defined: composition, what follows from it, limits, and the plans proposed from them. */
export const gradePageWords = {
  titleNew: 'A grade', title: (id: string) => `Grade ${id}`, changeNote: 'Lots, batches and charges keep what they were opened with.',
  save: 'Save it', saved: (id: string) => `${id} is saved.`, csv: 'Save as CSV', again: 'Change it again', unknown: (id: string) => ({ happened: `There is no grade ${id}.`, next: 'Choose one from the catalogue.' }),
  fields: { id: 'Number', idHint: '2 to 16 of A–Z, 0–9 and dash; it stays for good.', name: 'Name', powderPlan: 'Powder plan', blendPlan: 'Plan of blends', ownPowderPlan: 'the powder plan', furnacePlan: 'Furnace plan' },
  composition: {
    heading: 'Composition', component: 'Component', percent: 'Share', density: 'Own density', densityHint: 'Empty: that of the table.', table: (density: string) => `${density} g/cm³`, own: 'the plant’s own', unknown: 'give its density',
    add: 'Add a component', remove: (component: string) => `Take out ${component}`, sum: (sum: string) => `Together ${sum} %`, row: (nth: number) => `Component ${nth}`,
  },
  worked: {
    heading: 'What follows from it', waits: 'The composition is not whole yet.', noCobalt: 'There is no cobalt.',
    density: 'Theoretical density', binder: 'Binder by volume', carbon: 'Carbon, all of it bound', window: 'Two-phase carbon window, about', full: 'Saturation if all cobalt were pure (100 %)',
    coercivity: 'Coercivity to be expected, for orientation', intercept: 'Mean linear intercept of WC', grain: 'Grain size', how: (name: string, value: string) => `How? ${name}: ${value}`,
    coercivityOutside: '3 to 25 % cobalt and 0.2 to 10 µm only', range: (lower: string, upper: string) => `${lower} … ${upper}`,
  },
  grains: { nano: 'nano', ultrafine: 'ultrafine', submicron: 'submicron', fine: 'fine', medium: 'medium', coarse: 'coarse', 'extra coarse': 'extra coarse' },
  how: {
    formula: 'Formula', inputs: 'Inputs', limitsNote: 'As a limit', units: 'In the units in use',
    density: '1/ρ = Σ wᵢ/ρᵢ', binder: 'v = Σ w/ρ of the binder ÷ Σ w/ρ of all', carbon: 'C = Σ wᵢ · cᵢ; straight grades 6.132 · (1 − w)', window: 'upper end C, width 0.015 wt% for each wt% of cobalt', full: 'Ms = 201.6 µT·m³/kg · w',
    coercivity: 'Hc = (1.44 + 0.04 Co) + (12.47 − 0.37 Co)/d', grain: 'nano < 0.2 · ultrafine < 0.5 · submicron < 0.8 · fine < 1.3 · medium < 2.5 · coarse to 6.0 µm · extra coarse',
    densityLimits: 'Prefilled as theory ± 0.05 g/cm³; inside its limits a density does not prove the composition (ASTM B311).', noLimit: 'Never a limit: published fits differ. The grade’s own limits are given by the plant.', approximate: 'A figure to look from, not a limit: furnace, chromium, vanadium and cubic carbides move it.',
    ingredient: (component: string, percent: string, density: string, carbon: string) => `${component} ${percent} %, ${density} g/cm³${carbon === '' ? '' : `, ${carbon} % carbon`}`,
    cobalt: (percent: string) => `cobalt ${percent} wt%`, intercept: (um: string) => `intercept ${um} µm`, carbonOf: (percent: string) => `carbon ${percent} wt%`,
    sources: {
      mixture: 'Rule of mixtures', atomic: 'Atomic masses (IUPAC)', window: 'Width of the window', place: 'Its place at the stoichiometric carbon', cobalt: 'σ of cobalt 160.4 A·m²/kg; 4πσ', roebuck: 'After Roebuck (NPL), coefficients not confirmed', grain: 'ISO 4499-2, annex',
      component: (component: string, source: string) => `${component}: ${source}`, own: (component: string) => `${component}: given by the plant`,
    },
  },
  limits: {
    heading: 'Limits', note: 'What is left empty is not judged. Prefilled where the trade has a formula or a usual figure; coercivity and hardness are the grade’s own.', fill: 'Fill empty ones from the formulas',
    lower: 'least', upper: 'most', density: 'Density', coercivity: 'Coercivity', hardness: 'Hardness', porosity: 'Worst porosity accepted', notJudged: 'not judged', flags: 'At most', field: (name: string, side: string) => `${name}, ${side}`,
    porosityType: { A: 'A, pores up to 10 µm', B: 'B, pores 10 to 25 µm', C: 'C, free carbon' },
  },
  saturation: {
    heading: 'Relative saturation', unit: 'Read at the bench in', low: 'Rejected below', warnLow: 'Warned of below', warnHigh: 'Warned of above', high: 'Rejected above',
    caption: 'Window of relative saturation', axis: 'Relative saturation, %', axisOf: (unit: string) => `Reading, ${unit}`, none: 'Four rising percentages draw the window.', meaning: 'What it means', table: 'The window in figures', band: 'Band', from: 'From', to: 'To', reading: (unit: string) => `Reading, ${unit}`,
    bands: { low: 'rejected: towards η phase', warnLow: 'warning, low', normal: 'normal', warnHigh: 'warning, high', high: 'rejected: towards free carbon' },
    short: { low: 'towards η', warnLow: 'warning', normal: 'normal', warnHigh: 'warning', high: 'free carbon' },
    meanings: { low: 'short of carbon: tungsten dissolved in the binder, in the end η phase', warnLow: 'near that', normal: 'carbide and binder only', warnHigh: 'near free carbon', high: 'too much carbon: in the end free carbon' },
  },
  correction: {
    heading: 'Carbon correction of a batch', batch: 'Batch', now: 'Carbon now', target: 'Carbon wanted', oxygen: 'Oxygen of the powder', addCarbon: (kg: string) => `Add ${kg} kg of carbon`, addTungsten: (kg: string) => `Add ${kg} kg of tungsten`, nothing: 'Nothing is to be added.',
    eaten: (kg: string) => `The oxygen takes up to ${kg} kg of carbon more in the furnace (as CO).`, waits: 'Give the batch and both carbons.', how: 'Mass balance, derived: M (c₂ − c₁)/(100 − c₂) of carbon, or M (c₁ − c₂)/c₂ of tungsten.', caution: 'Follow your site’s rules and the safety data sheets when powder is opened.',
  },
  proposal: {
    heading: 'Plans from these limits', note: 'A draft is begun here and shown to you before anything is written. Two engineers approve it.', furnace: (plan: string) => `Draft the sintered check in ${plan}`, powder: (plan: string) => `Draft the powder lab in ${plan}`,
    nothing: 'The plan judges by these limits already, or there is none yet that it could judge by.', noPlan: 'Choose the plan first.', noGate: (plan: string) => `${plan} has no gate whose pieces are taken at places, from barrels or by a fixed number.`, save: 'Save the grade first, so that plan and grade say the same.', kept: (plan: string) => `You have a draft of ${plan} here already. Finish or discard it first.`,
  },
  wrong: { missing: 'This must be filled in.', number: 'A number above 0.', percent: 'A number above 0, at most 100.' },
  csvHead: { part: 'Part', name: 'Name', value: 'Value', unit: 'Unit', source: 'Source' },
  csvParts: { composition: 'composition', worked: 'worked out', limits: 'limit' },
} as const;
