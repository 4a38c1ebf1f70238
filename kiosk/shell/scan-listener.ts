/** Longest pause between two characters of one scan, ms: scanners that type stay well under it (common practice, no source). */
const longestPauseMs = 80;
/** Shorter bursts than this are a person's typing. */
const fewestCharacters = 3;

/**
 * Control characters that a scanner types with the Ctrl key when it sends an ISO/IEC 15434 message: Ctrl+D is EOT, Ctrl+] GS, Ctrl+^ RS
 * (ASCII, ISO/IEC 646). Left to the browser, Ctrl+D would set a bookmark.
 */
const CONTROL_KEYS: Readonly<Record<string, string>> = { d: '\x04', D: '\x04', '\\': '\x1c', ']': '\x1d', '^': '\x1e', '6': '\x1e', '_': '\x1f', '-': '\x1f' };
/** Other names scanners give the same characters. */
const NAMED_KEYS: Readonly<Record<string, string>> = { F8: '\x1d' };

/** One key as the listener needs it. */
export interface ScannedKey { readonly key: string; readonly ctrl: boolean; readonly alt: boolean; readonly atMs: number }

/** Puts the characters of one scan together. A scan is a fast burst that ends with Enter and is not a plain figure (that is a gauge). */
export class ScanBurst {
  #text = '';
  #alt = '';
  #lastAtMs = Number.NEGATIVE_INFINITY;

  /**
   * Hears of one key.
   * @returns `scan` with its text; `swallow` for a key the browser must not act on; `pass` for any other
   */
  hear({ key, ctrl, alt, atMs }: ScannedKey): { readonly what: 'pass' | 'swallow' } | { readonly what: 'scan'; readonly text: string } {
    if (atMs - this.#lastAtMs > longestPauseMs) this.#text = this.#alt = '';
    this.#lastAtMs = atMs;
    if (key === 'Enter') return this.#end();
    if (alt && /^[0-9]$/.test(key)) {
      this.#alt += key;
      return { what: 'swallow' };
    }
    this.releaseAlt();
    const control = ctrl ? CONTROL_KEYS[key] : NAMED_KEYS[key];
    if (control !== undefined && (this.#text.startsWith('[)>') || !ctrl)) {
      this.#text += control;
      return { what: 'swallow' };
    }
    if (key.length === 1 && !ctrl) this.#text += key;
    return { what: 'pass' };
  }

  /** The Alt key was let go: digits typed with it name one character by its number. */
  releaseAlt(): void {
    if (this.#alt === '') return;
    this.#text += String.fromCharCode(Number(this.#alt));
    this.#alt = '';
  }

  #end(): { readonly what: 'pass' } | { readonly what: 'scan'; readonly text: string } {
    this.releaseAlt();
    const text = this.#text;
    this.#text = '';
    const isFigure = /^\s*[-+]?[0-9]*[.,]?[0-9]*\s*(mm|g|µm|um|kA\/m|%|HV30|g\/cm³)?$/.test(text);
    return text.length < fewestCharacters || isFigure ? { what: 'pass' } : { what: 'scan', text };
  }
}

/**
 * Hears scans anywhere on the page and tells them as the event `kiosk-scanned` `{ text }` on `document`. Whoever takes it calls
 * `preventDefault`; what nobody takes, `onScan` gets. Scans into a text field are left to the field.
 */
export function listenForScans(onScan: (text: string) => void): void {
  const burst = new ScanBurst();
  document.addEventListener('keydown', (event) => {
    if (isTextField(event)) return;
    const heard = burst.hear({ key: event.key, ctrl: event.ctrlKey, alt: event.altKey, atMs: event.timeStamp });
    if (heard.what === 'pass') return;
    event.preventDefault();
    event.stopPropagation();
    if (heard.what === 'scan' && document.dispatchEvent(new CustomEvent('kiosk-scanned', { detail: { text: heard.text }, cancelable: true }))) onScan(heard.text);
  }, { capture: true });
  document.addEventListener('keyup', (event) => {
    if (event.key === 'Alt') burst.releaseAlt();
  });
}

/** True where typed text belongs to a field of its own; the figure of a keypad does not count. */
function isTextField(event: KeyboardEvent): boolean {
  const path = event.composedPath();
  const [from] = path;
  const isField = from instanceof HTMLTextAreaElement || (from instanceof HTMLInputElement && ['text', 'search', 'password', 'number', 'date'].includes(from.type));
  return isField && !path.some((part) => part instanceof HTMLElement && part.localName === 'gh-keypad');
}
