import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';

// The decoder would fetch its own binary from the network; it lies in the package.
const binary = readFileSync(createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm'));
prepareZXingModule({ overrides: { wasmBinary: new Uint8Array(binary).buffer } });

/** Reads the Data Matrix of a picture with a decoder that shares no code with the encoder; empty when none is found. */
export async function readDataMatrix(png: Uint8Array): Promise<string> {
  const [found] = await readBarcodes(png, { formats: ['DataMatrix'] });
  return Buffer.from(found?.bytes ?? []).toString('latin1');
}
