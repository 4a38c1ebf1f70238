import { crc32, deflateSync } from 'node:zlib';

/**
 * A one-bit greyscale PNG that knows its size in millimetres, which label printers and their drivers honour.
 * @param dots one byte a dot, 1 is black
 * @see W3C, Portable Network Graphics (PNG) Specification: IHDR, pHYs, IDAT, IEND
 */
export function bilevelPng(dots: Uint8Array, width: number, height: number, dotsPerMm: number): Buffer {
  const bytesPerRow = Math.ceil(width / 8);
  const rows = Buffer.alloc((bytesPerRow + 1) * height);
  for (let y = 0; y < height; y += 1) {
    const start = y * (bytesPerRow + 1) + 1; // the byte before each row names its filter: none
    for (let x = 0; x < width; x += 1) {
      if (dots[y * width + x] !== 1) rows[start + (x >> 3)] = (rows[start + (x >> 3)] ?? 0) | (0x80 >> (x & 7));
    }
  }
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.writeUInt8(1, 8); // one bit a dot, greyscale
  const physical = Buffer.alloc(9);
  physical.writeUInt32BE(Math.round(dotsPerMm * 1000), 0);
  physical.writeUInt32BE(Math.round(dotsPerMm * 1000), 4);
  physical.writeUInt8(1, 8); // dots a metre
  const signature = Buffer.from('89504e470d0a1a0a', 'hex');
  return Buffer.concat([signature, chunk('IHDR', header), chunk('pHYs', physical), chunk('IDAT', deflateSync(rows)), chunk('IEND', Buffer.alloc(0))]);
}

function chunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const frame = Buffer.alloc(8);
  frame.writeUInt32BE(data.length, 0);
  frame.writeUInt32BE(crc32(body), 4);
  return Buffer.concat([frame.subarray(0, 4), body, frame.subarray(4)]);
}
