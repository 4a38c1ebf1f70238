/** What the printed sheet of a charge says beside its drawings. */
export const chargeSheetWords = {
  map: (equipment: string) => `Map of ${equipment}`,
  legend: 'Letter: the lot that lies there. Dashed: near a failed position. Small triangle: test piece; crossed out: it failed.',
  lot: (mark: string, lot: string, places: string, again: string | null, left: boolean) => `${mark}  ${lot}: ${places}${again === null ? '' : ` (${again})`}${left ? ', taken out to be done again' : ''}`,
  log: (file: string) => `Furnace log ${file}`,
  logAlternative: (verdict: string) => `Temperature and pressure over time, ${verdict}; the lines below say where.`,
  axes: { temperature: 'Temperature, °C', pressure: 'Pressure, mbar', time: 'Time from the start, min', legend: 'Bands: windows of the programme. Dashed: steepest ramp allowed. Flags: as numbered below.' },
  checked: (programme: string, version: number, verdict: string) => `Held against programme ${programme}, version ${version}: ${verdict}.`,
  digest: (digest: string) => `File SHA-256 ${digest}`,
};
