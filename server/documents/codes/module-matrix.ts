import bwipjs from 'bwip-js/node';

/** A two-dimensional code before it has a size: `dark` row by row from the top, `modules` wide and high, no quiet zone. */
export interface ModuleMatrix {
  readonly modules: number;
  readonly dark: readonly boolean[];
}

/** A horizontal run of dark modules, measured in modules from the upper left corner. */
export interface DarkRun {
  readonly x: number;
  readonly y: number;
  readonly length: number;
}

/** QR code with error correction M. @see ISO/IEC 18004 */
export function qrCode(text: string): ModuleMatrix {
  return matrixOf(bwipjs.raw('qrcode', text, 'eclevel=M'));
}

/** The modules the encoder drew; also for a code whose words were worked out before. */
export function matrixOf([symbol]: readonly object[]): ModuleMatrix {
  if (!isDrawn(symbol)) throw new Error('the encoder drew no matrix');
  if (symbol.pixx !== symbol.pixy) throw new Error(`the encoder drew ${symbol.pixx} by ${symbol.pixy}, not a square`);
  return { modules: symbol.pixx, dark: Array.from(symbol.pixs, (module) => module === 1) };
}

interface Drawn {
  readonly pixs: readonly number[];
  readonly pixx: number;
  readonly pixy: number;
}

function isDrawn(symbol: object | undefined): symbol is Drawn {
  return symbol !== undefined && 'pixs' in symbol;
}

/** The dark modules as runs: about a third of the rectangles, and no hairline between neighbours. */
export function darkRuns({ modules, dark }: ModuleMatrix): readonly DarkRun[] {
  const runs: DarkRun[] = [];
  for (let y = 0; y < modules; y += 1) {
    for (let x = 0; x < modules; x += 1) {
      const start = x;
      while (x < modules && dark[y * modules + x] === true) x += 1;
      if (x > start) runs.push({ x: start, y, length: x - start });
    }
  }
  return runs;
}
