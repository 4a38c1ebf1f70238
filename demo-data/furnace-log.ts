/** A stretch of an invented run: minutes, and what temperature and pressure run to in that time. */
interface Stretch { readonly minutes: number; readonly toC: number; readonly toMbar: number }
const RUN: readonly Stretch[] = [
  { minutes: 390, toC: 445, toMbar: 5 }, { minutes: 40, toC: 450, toMbar: 2 }, { minutes: 160, toC: 1405, toMbar: 0.1 }, { minutes: 6, toC: 1410, toMbar: 0.1 },
  { minutes: 10, toC: 1410, toMbar: 60_000 }, { minutes: 40, toC: 1410, toMbar: 60_000 }, { minutes: 4, toC: 1408, toMbar: 40_000 }, { minutes: 150, toC: 190, toMbar: 1000 },
];

/**
 * CSV of an invented run by programme SINTER-07, a row a minute for some 13 h, decimal points between semicolons. It swings by half a degree
 * like a controller at work, and swings in time differently for every charge. With `dip` the temperature falls to 1,391 °C for seven minutes of the soak.
 */
export function demoFurnaceLog(charge: string, { dip = false }: { readonly dip?: boolean } = {}): string {
  const phase = [...charge].reduce((sum, sign) => sum + sign.charCodeAt(0), 0);
  const rows = ['time [min];temperature [°C];pressure [mbar]'];
  let [at, celsius, millibar] = [0, 22, 1];
  const write = (minute: number, temperature: number, pressure: number): void => {
    const swing = 0.5 * Math.sin((minute + phase) / 7);
    const isDip = dip && minute >= 615 && minute < 622;
    rows.push(`${minute};${(isDip ? 1391 + swing : temperature + swing).toFixed(1)};${pressure.toPrecision(4)}`);
  };
  write(0, celsius, millibar);
  for (const { minutes, toC, toMbar } of RUN) {
    for (let step = 1; step <= minutes; step += 1) write(at + step, celsius + ((toC - celsius) * step) / minutes, millibar + ((toMbar - millibar) * step) / minutes);
    [at, celsius, millibar] = [at + minutes, toC, toMbar];
  }
  return rows.join('\n');
}
