import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium } from 'playwright';

const launch = () => chromium.launch({
  ...(existsSync('/usr/bin/chromium') ? { executablePath: '/usr/bin/chromium' } : {}),
  args: ['--headless', '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'],
});

/** What the page loads before a desk is opened: the entry of the built kiosk and all it imports at once, compressed. */
export async function measureFirstLoad() {
  const folder = 'dist/kiosk';
  const html = readFileSync(join(folder, 'index.html'), 'utf8');
  const wanted = [...html.matchAll(/(?:src|href)="\/([^"]+\.(?:js|css))"/g)].map(([, path]) => path);
  const seen = new Set();
  for (let at = 0; at < wanted.length; at += 1) {
    const path = wanted[at];
    if (seen.has(path)) continue;
    seen.add(path);
    if (!path.endsWith('.js')) continue;
    const code = readFileSync(join(folder, path), 'utf8');
    for (const [, other] of code.matchAll(/(?:from|import)\s*"\.\/([^"]+\.js)"/g)) wanted.push(join('assets', other));
  }
  const bytes = gzipSync(html).length + [...seen].reduce((sum, path) => sum + gzipSync(readFileSync(join(folder, path))).length, 0);
  const all = readdirSync(join(folder, 'assets')).filter((name) => name.endsWith('.js')).length;
  return [[`kiosk's first load, ${seen.size} of ${all} scripts`, `${(bytes / 1024).toFixed(1)} KiB compressed`, null, null, '< 100 KiB', bytes < 100 * 1024]];
}

/** A traveller of 2,000 slips: from the touch to the newest slip on the page, and the frames while it is scrolled. */
export async function measureLongTraveller({ url, badge, pin, subjects }) {
  const browser = await launch();
  try {
    const context = await browser.newContext({ baseURL: url, viewport: { width: 1280, height: 800 }, hasTouch: true });
    const signOn = await context.request.post('/api/session', { data: { badge, pin, bench: 'Bench' } });
    if (!signOn.ok()) throw new Error(`sign-on answered ${signOn.status()}`);
    const page = await context.newPage();
    const path = `/traveller/lot/${subjects[0].slice(4)}`;
    const opened = [];
    for (let run = 0; run < 7; run += 1) {
      await page.goto('/bench');
      await page.waitForSelector('gh-bench-desk');
      await page.waitForTimeout(300);
      // From the link followed inside the page, as a touch follows it, to the first paint with slips on it.
      opened.push(await page.evaluate((to) => new Promise((resolve) => {
        const deep = (root, name) => {
          for (const element of root.querySelectorAll('*')) {
            if (element.localName === name) return element;
            const found = element.shadowRoot === null ? null : deep(element.shadowRoot, name);
            if (found !== null) return found;
          }
          return null;
        };
        const begun = performance.now();
        history.pushState(null, '', to);
        dispatchEvent(new PopStateEvent('popstate'));
        const look = () => {
          const slip = deep(document, 'gh-slip');
          if (slip !== null && slip.getBoundingClientRect().height > 0) requestAnimationFrame(() => resolve(performance.now() - begun));
          else requestAnimationFrame(look);
        };
        look();
      }), path));
    }
    opened.shift(); // the first one also loads the desk
    const frames = await page.evaluate(() => new Promise((resolve) => {
      const scrollers = [];
      const walk = (root) => {
        for (const element of root.querySelectorAll('*')) {
          if (element.scrollHeight > element.clientHeight + 200 && /auto|scroll/.test(getComputedStyle(element).overflowY)) scrollers.push(element);
          if (element.shadowRoot !== null) walk(element.shadowRoot);
        }
      };
      walk(document);
      const scroller = scrollers.sort((a, b) => b.scrollHeight - a.scrollHeight)[0] ?? document.scrollingElement;
      const gaps = [];
      let last = performance.now();
      let left = 120;
      const step = () => {
        const now = performance.now();
        gaps.push(now - last);
        last = now;
        scroller.scrollTop -= 60;
        left -= 1;
        if (left > 0) requestAnimationFrame(step); else resolve(gaps.slice(5));
      };
      scroller.scrollTop = scroller.scrollHeight;
      requestAnimationFrame(step);
    }));
    const middle = [...opened].sort((a, b) => a - b)[Math.floor(opened.length / 2)];
    const dropped = frames.filter((gap) => gap > 25).length;
    return [
      ['traveller of 2,000 slips opens', `${middle.toFixed(0)} ms`, null, null, '< 200 ms', middle < 200],
      [`the same, scrolled over ${frames.length} frames: dropped`, String(dropped), null, null, '0', dropped === 0],
    ];
  } finally {
    await browser.close();
  }
}
