/** What a person may do. One person may hold several roles. */
export const ROLES = ['inspector', 'lab', 'engineer', 'releaser', 'packer', 'keeper'] as const;
export type Role = (typeof ROLES)[number];

/** The roles that may give each command. Gate work asks the plan instead, and says so here with `gate`. */
export const RIGHTS = {
  openPlant: 'anyone', openBatch: ['lab'], blendBatches: ['lab'], openLot: ['inspector', 'engineer'], openCharge: ['lab', 'inspector'], attachFurnaceLog: ['lab', 'inspector', 'engineer'],
  openGate: 'gate', takeReading: 'gate', takeWeights: 'gate', recordFinding: 'gate', withdrawFinding: 'gate', takeLook: 'gate', completeSample: 'gate',
  correctReading: 'gate', recordSort: ['inspector', 'engineer'],
  hold: 'anyone', dispose: ['engineer'], addNote: 'anyone',
  destroyPieces: ['inspector', 'lab', 'engineer'], scrapPieces: ['inspector', 'engineer'], splitLot: ['inspector', 'engineer'],
  releaseBatch: ['lab', 'engineer'], releaseLot: ['releaser'], withdrawRelease: ['releaser', 'engineer'],
  packBox: ['packer'], printLabel: ['packer'], readLabel: ['packer'], voidBox: ['packer'], shipBox: ['packer'],
  setSwitching: ['engineer'], resumeInspection: ['engineer'],
  defineChart: ['engineer'], freezeChartLimits: ['engineer'], unfreezeChartLimits: ['engineer'], restartChart: ['engineer'], withdrawChart: ['engineer'],
  draftPlan: ['engineer'], approvePlan: ['engineer'], moveLotToPlan: ['engineer'], loadTable: ['engineer'], writeCaution: ['engineer', 'keeper'], defineProduct: ['engineer'], defineGrade: ['engineer'], defineLayer: ['engineer'], defineEquipment: ['engineer'], defineProgramme: ['engineer'],
  registerGauge: ['keeper', 'lab', 'engineer'], checkGauge: ['inspector', 'lab', 'engineer', 'keeper'], setGaugeLine: ['keeper', 'lab', 'engineer'], holdRecall: ['engineer'], closeRecall: ['engineer'], calibrateGauge: ['keeper', 'lab', 'engineer'], withdrawGauge: ['keeper', 'lab', 'engineer'], setGaugeUncertainty: ['engineer'],
  openStudy: ['lab', 'engineer'], takeStudyReading: 'anyone', correctStudyReading: 'anyone', withdrawStudyReading: 'anyone', closeStudy: ['engineer'], abandonStudy: ['lab', 'engineer'],
  registerPress: ['keeper', 'engineer'], changePress: ['keeper', 'engineer'], setPress: ['inspector', 'engineer'],
  enrolPerson: ['keeper'], changePerson: ['keeper'], changePin: 'anyone',
} as const satisfies Record<string, readonly Role[] | 'anyone' | 'gate'>;

/** True when someone with these roles may give the command, as far as the role decides it. */
export function mayGive(command: keyof typeof RIGHTS, roles: readonly Role[]): boolean {
  const needed: readonly Role[] | 'anyone' | 'gate' = RIGHTS[command];
  return typeof needed === 'string' || needed.some((role) => roles.includes(role));
}
