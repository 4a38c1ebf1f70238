import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';

// The decoder would fetch its own binary from the network; it lies in the package.
const binary = readFileSync(createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm'));
prepareZXingModule({ overrides: { wasmBinary: new Uint8Array(binary).buffer } });

/** Reads the first code of a picture with ZXing, which shares no code with the encoder; its bytes as Latin-1, empty if none is found. */
export async function readCode(png: Uint8Array, format: 'DataMatrix' | 'QRCode'): Promise<string> {
  const found = await readBarcodes(png, { formats: [format] });
  return Buffer.from(found[0]?.bytes ?? []).toString('latin1');
}
