/** How long the pictures of a print may take to come, ms: then the print is given up and said to have failed. */
const longestWaitMs = 15_000;

/** Where the pictures of a box's label are. @param kind `label` exists once it was entered as printed; `preview` always, marked as one */
export function labelPath(lot: string, serial: string, file: 'label.svg' | 'label.pdf' | 'label.png' | 'preview.svg'): string {
  return `/api/lots/${encodeURIComponent(lot)}/boxes/${encodeURIComponent(serial)}/${file}?size=100x50`;
}

/**
 * Hands labels to the browser's printer, one a page of 100 × 50 mm, from a frame nobody sees.
 * @param paths pictures of the labels, in order
 * @returns false where a picture did not come or the browser cannot print
 */
export async function printLabels(paths: readonly string[]): Promise<boolean> {
  const frame = document.createElement('iframe');
  frame.hidden = true;
  frame.title = '';
  document.body.append(frame);
  const view = frame.contentWindow as (Window & typeof globalThis) | null;
  const page = frame.contentDocument;
  if (view === null || page === null) return gone(frame);
  const style = new view.CSSStyleSheet();
  style.replaceSync('@page { size: 100mm 50mm; margin: 0 } html, body { margin: 0 } img { display: block; inline-size: 100mm; block-size: 50mm; break-after: page; break-inside: avoid }');
  page.adoptedStyleSheets = [style];
  const pictures = paths.map((path) => {
    const picture = page.createElement('img');
    picture.src = path;
    return picture;
  });
  page.body.append(...pictures);
  try {
    await Promise.race([Promise.all(pictures.map((picture) => picture.decode())), after(longestWaitMs)]);
  } catch {
    // A label that is not there, or not in time: nothing half-printed goes to the printer.
    return gone(frame);
  }
  view.addEventListener('afterprint', () => frame.remove());
  view.focus();
  view.print();
  return true;
}

function gone(frame: HTMLIFrameElement): false {
  frame.remove();
  return false;
}

function after(ms: number): Promise<never> {
  return new Promise((_, reject) => setTimeout(() => reject(new Error('the pictures did not come')), ms));
}
