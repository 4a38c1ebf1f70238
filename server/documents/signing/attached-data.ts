import { inflateSync } from 'node:zlib';

/** Larger than any certificate's data; a hostile file must not fill the memory. */
const mostBytes = 8 * 1024 * 1024;

/**
 * The files attached to a PDF, in the order they stand in it. Reads our own files and those a common tool has rewritten, as attached files
 * stay separate, deflated or plain streams; an encrypted file yields nothing.
 * @see ISO 32000-1, 7.11.4 (embedded file streams)
 */
export function attachedData(pdf: Buffer): readonly Buffer[] {
  const text = pdf.toString('latin1'); // one character a byte
  const files: Buffer[] = [];
  for (const { index } of text.matchAll(/\/Type\s*\/EmbeddedFile\b/g)) {
    const opening = /stream\r?\n/g;
    opening.lastIndex = index;
    const stream = opening.exec(text);
    if (stream === null) continue;
    const objectStart = text.lastIndexOf(' obj', index);
    const dictionary = text.slice(Math.max(0, objectStart), stream.index);
    const start = stream.index + stream[0].length;
    const end = text.indexOf('endstream', start);
    const raw = pdf.subarray(start, end < 0 ? undefined : end);
    const content = contentOf(raw, dictionary);
    if (content !== null) files.push(content);
  }
  return files;
}

function contentOf(raw: Buffer, dictionary: string): Buffer | null {
  if (!dictionary.includes('/FlateDecode')) {
    const length = Number(/\/Length\s+(\d+)(?!\s+\d+\s+R)/.exec(dictionary)?.[1] ?? raw.length);
    return raw.subarray(0, length);
  }
  try {
    return inflateSync(raw, { maxOutputLength: mostBytes });
  } catch {
    return null; // damaged: the caller finds no data and says so
  }
}
