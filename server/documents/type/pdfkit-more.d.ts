/** What the PDF library understands beyond its published types. */
declare namespace PDFKit.Mixins {
  interface PDFFont {
    /** A font that is open already is taken as it is. */
    registerFont(name: string, src: import('fontkit').Font): this;
  }
  interface PDFAttachmentOptions {
    /** ISO 19005-3: how the file belongs to the document. */
    relationship?: 'Source' | 'Data' | 'Alternative' | 'Supplement' | 'Unspecified';
  }
  interface StructureElementOptions {
    /** What a table's head cell heads. */
    scope?: 'Row' | 'Column' | 'Both';
    /** Left, top, right, bottom in points. */
    bbox?: readonly [number, number, number, number];
    placement?: 'Block' | 'Inline';
  }
}
declare namespace PDFKit {
  interface PDFStructureElement {
    /** The element as it is written; `A` holds its attributes (ISO 32000-1, 14.8.5). */
    readonly dictionary: { readonly data: Record<string, unknown> };
  }
}
