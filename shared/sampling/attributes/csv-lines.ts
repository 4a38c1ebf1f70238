/** One line of a separated-values file: where it begins, counted from 1, and its cells without quotes or outer blanks. */
export interface CsvLine {
  readonly line: number;
  readonly cells: readonly string[];
}

/**
 * Cuts a text into lines and cells; quotes as in RFC 4180. Never refuses: a quote left open runs to the end of the text. Lines without any
 * cell filled are left out.
 */
export function csvLines(text: string, separator: string): readonly CsvLine[] {
  const lines: CsvLine[] = [];
  let cells: string[] = [];
  let cell = '';
  let quoted = false;
  let [line, begun] = [1, 1];
  const endCell = (): void => { cells.push(cell.trim()); cell = ''; };
  const endLine = (): void => {
    endCell();
    if (cells.some((each) => each !== '')) lines.push({ line: begun, cells });
    cells = [];
    begun = line + 1;
  };
  for (let at = 0; at < text.length; at += 1) {
    const sign = text.charAt(at);
    if (sign === '"' && quoted && text.charAt(at + 1) === '"') { cell += '"'; at += 1; }
    else if (sign === '"') quoted = !quoted;
    else if (sign === '\n') { if (quoted) cell += ' '; else endLine(); line += 1; }
    else if (quoted) cell += sign;
    else if (sign === separator) endCell();
    else cell += sign;
  }
  endLine();
  return lines;
}
