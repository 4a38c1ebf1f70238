import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A certificate as a reader that knows nothing of us sees it: its words in order, and its tables by their tags. */
export interface ReadCertificate { readonly text: string; readonly pages: number; readonly rows: readonly (readonly string[])[] }

interface Branch { readonly role?: string; readonly type?: string; readonly id?: string; readonly children?: readonly Branch[] }
interface Item { readonly type?: string; readonly id?: string; readonly str?: string; readonly hasEOL?: boolean }

/** Reads a tagged PDF with a general-purpose reader (pdfjs-dist): every table row with its cells, and all text. */
export async function readCertificate(pdf: Uint8Array): Promise<ReadCertificate> {
  const document = await getDocument({ data: new Uint8Array(pdf), verbosity: 0, isEvalSupported: false }).promise;
  const rows: string[][] = [];
  const words: string[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const { items } = await page.getTextContent({ includeMarkedContent: true });
    const marked = textByMark(items as readonly Item[]);
    words.push((items as readonly Item[]).map(({ str = '', hasEOL }) => (hasEOL === true ? `${str} ` : str)).join(''));
    collectRows(await page.getStructTree() as Branch, marked, rows);
  }
  await document.destroy();
  return { text: words.join(' ').replace(/\s+/g, ' '), pages: document.numPages, rows };
}

function textByMark(items: readonly Item[]): Map<string, string> {
  const text = new Map<string, string>();
  const open: (string | null)[] = [];
  for (const { type, id, str = '', hasEOL } of items) {
    if (type === 'beginMarkedContent' || type === 'beginMarkedContentProps') open.push(id ?? null);
    else if (type === 'endMarkedContent') open.pop();
    else {
      const mark = open.findLast((each) => each !== null);
      if (typeof mark === 'string') text.set(mark, `${text.get(mark) ?? ''}${str}${hasEOL === true ? ' ' : ''}`);
    }
  }
  return text;
}

function collectRows(branch: Branch, marked: ReadonlyMap<string, string>, rows: string[][]): void {
  if (branch.role === 'TR') rows.push((branch.children ?? []).map((cell) => wordsOf(cell, marked).replace(/\s+/g, ' ').trim()));
  else for (const child of branch.children ?? []) collectRows(child, marked, rows);
}
function wordsOf(branch: Branch, marked: ReadonlyMap<string, string>): string {
  return branch.type === 'content' ? marked.get(branch.id ?? '') ?? '' : (branch.children ?? []).map((child) => wordsOf(child, marked)).join(' ');
}
