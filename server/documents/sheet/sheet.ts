import PDFDocument from 'pdfkit';
import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';
import { darkRuns, type ModuleMatrix } from '../codes/module-matrix.ts';
import { collectPdf } from '../type/collect-pdf.ts';
import { canDraw, openedFace, textWidth, type Face } from '../type/typefaces.ts';
import { ink, mm, type InkName } from './ink.ts';
import { wrapText } from './wrap-text.ts';

export interface SheetAbout {
  /** Only `A–Z a–z 0–9`, blanks and `- . ,`: it is copied into the file's metadata as it stands. */
  readonly title: string;
  readonly language: string;
  /** When the file says it was made; the same data makes the same bytes. */
  readonly madeAt: Date;
  readonly isLandscape?: boolean;
  readonly marginMm?: number;
}

export interface TextStyle {
  readonly face: Face;
  readonly size: number;
  readonly ink?: InkName;
  /** Right-aligned in `width`, with figures of one width, so that columns line up. */
  readonly isFigure?: boolean;
}

/** One printed A4 document, tagged for screen readers, PDF/A-3b. Points from the upper left corner; `y` is where the next thing goes. */
export class Sheet {
  readonly doc: PDFKit.PDFDocument;
  readonly root: PDFKit.PDFStructureElement;
  readonly left: number;
  readonly width: number;
  readonly top: number;
  readonly bottom: number;
  y: number;
  readonly #whole: Promise<Buffer>;

  constructor(about: SheetAbout) {
    if (!/^[\w .,-]+$/.test(about.title)) throw new OutsideDomain('about.title', 'plain letters', about.title);
    const margin = (about.marginMm ?? 17) * mm;
    this.doc = new PDFDocument({
      size: 'A4', layout: about.isLandscape === true ? 'landscape' : 'portrait', margin: 0, bufferPages: true, autoFirstPage: false,
      pdfVersion: '1.7', subset: 'PDF/A-3b', tagged: true, lang: about.language, displayTitle: true,
      info: { Title: about.title, CreationDate: about.madeAt },
    });
    this.#whole = collectPdf(this.doc);
    for (const face of ['text', 'textStrong', 'narrow', 'narrowStrong'] satisfies Face[]) this.doc.registerFont(face, openedFace(face));
    this.doc.font('text');
    this.root = this.doc.struct('Document');
    this.doc.addStructure(this.root);
    this.doc.addPage();
    this.left = margin;
    this.width = this.doc.page.width - 2 * margin;
    this.top = margin + 9 * mm;
    this.bottom = this.doc.page.height - margin - 4 * mm;
    this.y = margin;
  }

  newPage(): void {
    this.doc.addPage();
    this.y = this.top;
  }

  /** Goes to a new page unless so much height is left. */
  need(height: number): boolean {
    if (this.y + height <= this.bottom) return false;
    this.newPage();
    return true;
  }

  /** A new element of the document's structure. */
  element(type: string, parent: PDFKit.PDFStructureElement = this.root, options: PDFKit.Mixins.StructureElementOptions = {}): PDFKit.PDFStructureElement {
    const element = this.doc.struct(type, options);
    parent.add(element);
    return element;
  }

  /** Draws what a screen reader should read, as content of an element. */
  tag(type: string, draw: () => void, parent: PDFKit.PDFStructureElement = this.root, options: PDFKit.Mixins.StructureElementOptions = {}): void {
    const element = this.element(type, parent, options);
    element.add(draw);
    element.end();
  }

  /** A cell of a table row, with the number of columns it reaches over. */
  tableCell(type: 'TH' | 'TD', draw: () => void, row: PDFKit.PDFStructureElement, { scope, columns }: { readonly scope?: 'Row' | 'Column'; readonly columns: number }): void {
    const element = this.element(type, row);
    if (scope !== undefined || columns > 1) element.dictionary.data['A'] = { O: 'Table', ...(scope === undefined ? {} : { Scope: scope }), ...(columns > 1 ? { ColSpan: columns } : {}) };
    element.add(draw);
    element.end();
  }

  /** Draws what a screen reader should pass over. */
  adorn(draw: () => void, kind: 'Layout' | 'Pagination' = 'Layout'): void {
    this.doc.markContent('Artifact', { type: kind });
    draw();
    this.doc.endMarkedContent();
  }

  /**
   * One line of text standing on `baseline`.
   * @throws OutsideDomain for a character the typeface lacks: an empty box on a certificate would be worse
   */
  line(text: string, x: number, baseline: number, style: TextStyle, width = 0): void {
    if (!canDraw(style.face, text)) throw new OutsideDomain('text', 'drawable in Latin, Greek or Cyrillic', text);
    const { doc } = this;
    doc.font(style.face).fontSize(style.size).fillColor(ink[style.ink ?? 'ink']);
    const at = style.isFigure === true ? x + width - this.#figureWidth(text, style) : x;
    doc.text(text, at, baseline, { lineBreak: false, baseline: 'alphabetic', ...(style.isFigure === true ? { features: ['tnum'] } : {}) });
  }

  #figureWidth(text: string, { face, size }: TextStyle): number {
    return this.doc.font(face).fontSize(size).widthOfString(text, { features: ['tnum'] });
  }

  /** A wrapped passage from `y` down, tagged; goes to a new page between lines where it must. */
  passage(text: string, style: TextStyle, options: { readonly x?: number; readonly width?: number; readonly type?: string; readonly leading?: number } = {}): void {
    const { x = this.left, width = this.width, type = 'P', leading = 1.35 } = options;
    const step = style.size * leading;
    const lines = wrapText(style.face, style.size, text, width);
    const element = this.element(type);
    for (const line of lines) {
      this.need(step);
      element.add(() => this.line(line, x, this.y + style.size, style, width));
      this.y += step;
    }
    element.end();
  }

  /** Height a passage will take. */
  passageHeight(text: string, style: TextStyle, width = this.width, leading = 1.35): number {
    return wrapText(style.face, style.size, text, width).length * style.size * leading;
  }

  heading(text: string, keepWith: number): void {
    this.need(keepWith);
    this.y += 1 * mm;
    this.tag('H2', () => this.line(text, this.left, this.y + 9, { face: 'textStrong', size: 10 }));
    this.y += 14;
  }

  rule(x: number, y: number, width: number, thick = 0.5, colour: InkName = 'rule'): void {
    this.adorn(() => this.doc.rect(x, y - thick / 2, width, thick).fill(ink[colour]));
  }

  bar(x: number, y: number, width: number, height: number, colour: InkName): void {
    this.adorn(() => this.doc.rect(x, y, width, height).fill(ink[colour]));
  }

  /** A two-dimensional code as one vector path, `side` points wide without its quiet zone. */
  code(matrix: ModuleMatrix, x: number, y: number, side: number, alternative: string): void {
    const module = side / matrix.modules;
    this.tag('Figure', () => {
      for (const run of darkRuns(matrix)) this.doc.rect(x + run.x * module, y + run.y * module, run.length * module, module);
      this.doc.fill(ink.ink);
    }, this.root, { alt: alternative, bbox: [x, y, x + side, y + side], placement: 'Block' });
  }

  textWidth(text: string, style: TextStyle): number {
    return textWidth(style.face, text, style.size);
  }

  /** Puts head and foot on every page, now that their number is known, and closes the file. */
  finish(page: (page: number, of: number) => void): Promise<Buffer> {
    const { count } = this.doc.bufferedPageRange();
    for (let i = 0; i < count; i += 1) {
      this.doc.switchToPage(i);
      this.adorn(() => page(i + 1, count), 'Pagination');
    }
    this.root.end();
    this.doc.end();
    return this.#whole;
  }
}
