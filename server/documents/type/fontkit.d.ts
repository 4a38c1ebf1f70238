/** The part of fontkit we use; the package brings no types. Font units throughout, y upward. */
declare module 'fontkit' {
  export interface PathCommand {
    readonly command: 'moveTo' | 'lineTo' | 'quadraticCurveTo' | 'bezierCurveTo' | 'closePath';
    readonly args: readonly number[];
  }
  export interface Glyph {
    readonly id: number;
    readonly path: { readonly commands: readonly PathCommand[] };
  }
  export interface GlyphRun {
    readonly glyphs: readonly Glyph[];
    readonly positions: readonly { readonly xAdvance: number; readonly xOffset: number; readonly yOffset: number }[];
    readonly advanceWidth: number;
  }
  export interface Font {
    readonly postscriptName: string;
    readonly unitsPerEm: number;
    readonly capHeight: number;
    layout(text: string, features?: readonly string[]): GlyphRun;
    hasGlyphForCodePoint(codePoint: number): boolean;
  }
  export function create(data: Uint8Array): Font;
}
