import { textWidth, type Face } from '../type/typefaces.ts';

/** Breaks a passage into lines no wider than `width`, in the unit of `size`. A word wider than a line is broken where it must be. */
export function wrapText(face: Face, size: number, passage: string, width: number): readonly string[] {
  return passage.split('\n').flatMap((paragraph) => wrapParagraph(face, size, paragraph, width));
}

function wrapParagraph(face: Face, size: number, paragraph: string, width: number): readonly string[] {
  const blank = textWidth(face, ' ', size);
  const lines: string[] = [];
  let line = '';
  let filled = 0;
  for (const word of paragraph.split(' ').flatMap((whole) => breakWord(face, size, whole, width))) {
    const wide = textWidth(face, word, size);
    if (line !== '' && filled + blank + wide > width) {
      lines.push(line);
      line = '';
    }
    filled = line === '' ? wide : filled + blank + wide;
    line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line];
}

function breakWord(face: Face, size: number, word: string, width: number): readonly string[] {
  if (textWidth(face, word, size) <= width) return [word];
  const parts: string[] = [];
  let part = '';
  for (const character of word) {
    if (part !== '' && textWidth(face, part + character, size) > width) {
      parts.push(part);
      part = '';
    }
    part += character;
  }
  return [...parts, part];
}
