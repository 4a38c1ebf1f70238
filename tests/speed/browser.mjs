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

/** Put into the page: the first element of a name, through every shadow root. */
const lookup = () => {
  window.deep = (name, root = document) => {
    for (const element of root.querySelectorAll('*')) {
      if (element.localName === name) return element;
      const found = element.shadowRoot === null ? null : window.deep(name, element.shadowRoot);
      if (found !== null) return found;
    }
    return null;
  };
  /** Is the slip with this number in sight in the list? */
  window.inSight = (version) => {
    const list = window.deep('lit-virtualizer');
    const box = list?.getBoundingClientRect();
    return [...list?.querySelectorAll('gh-slip') ?? []].some((slip) => {
      const { top, bottom, height } = slip.getBoundingClientRect();
      return slip.number === version && height > 0 && top < box.bottom && bottom > box.top;
    });
  };
  /** Gaps between frames in ms while an element is scrolled from its foot upwards, as a steady finger would. */
  window.framesOf = (scroller, frames) => new Promise((resolve) => {
    const gaps = [];
    let last = performance.now();
    const step = () => {
      const now = performance.now();
      gaps.push(now - last);
      last = now;
      scroller.scrollTop -= 60;
      if (gaps.length < frames) requestAnimationFrame(step); else resolve(gaps.slice(5));
    };
    scroller.scrollTop = scroller.scrollHeight;
    requestAnimationFrame(() => requestAnimationFrame(step));
  });
};

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
/** At 60 frames a second one lasts 16.7 ms; a gap past 25 has missed one. */
const dropped = (gaps) => gaps.filter((gap) => gap > 25).length;

/** A traveller of 2,000 slips: from the touch to its newest slip in sight, and the frames while all of it is scrolled, beside a bare list of few rows. */
export async function measureLongTraveller({ url, badge, pin, subjects, newest }) {
  const browser = await launch();
  try {
    const context = await browser.newContext({ baseURL: url, viewport: { width: 1280, height: 800 }, hasTouch: true });
    await context.addInitScript(lookup);
    const signOn = await context.request.post('/api/session', { data: { badge, pin, bench: 'Bench' } });
    if (!signOn.ok()) throw new Error(`sign-on answered ${signOn.status()}`);
    const page = await context.newPage();
    const path = `/traveller/lot/${subjects[0].slice(4)}`;
    const opened = [];
    for (let run = 0; run < 7; run += 1) {
      await page.goto('/bench');
      await page.waitForSelector('gh-bench-desk');
      await page.waitForTimeout(300);
      // From the link followed inside the page, as a touch follows it, to the first paint with the newest slip on it.
      opened.push(await page.evaluate(({ to, version }) => new Promise((resolve) => {
        const begun = performance.now();
        history.pushState(null, '', to);
        dispatchEvent(new PopStateEvent('popstate'));
        const look = () => (window.inSight(version) ? requestAnimationFrame(() => resolve(performance.now() - begun)) : requestAnimationFrame(look));
        look();
      }), { to: path, version: String(newest) }));
    }
    opened.shift(); // the first one also loads the desk
    // It opens on its newest slips; the older ones are fetched as a person would, until all are there.
    const rows = await page.evaluate(async () => {
      const slips = window.deep('gh-slips');
      const frame = () => new Promise((resolve) => requestAnimationFrame(resolve));
      while (slips.more) {
        const { length } = slips.rows;
        slips.renderRoot.querySelector('.earlier gh-button').click();
        while (slips.more && slips.rows.length === length) await frame();
      }
      return window.deep('lit-virtualizer').items.length;
    });
    if (rows < newest) throw new Error(`${rows} of ${newest} slips are in the list`);
    const ours = [];
    const bare = [];
    for (let pass = 0; pass < 3; pass += 1) {
      ours.push(dropped(await page.evaluate(() => window.framesOf(window.deep('lit-virtualizer'), 180))));
      bare.push(dropped(await page.evaluate(async () => {
        const plain = document.createElement('div');
        plain.style.cssText = 'position: fixed; inset: 0 auto auto 0; inline-size: 20rem; block-size: 20rem; overflow: auto; background: white';
        plain.innerHTML = '<p>One plain row</p>'.repeat(400);
        document.body.append(plain);
        const gaps = await window.framesOf(plain, 180);
        plain.remove();
        return gaps;
      })));
    }
    return [
      [`traveller of ${rows} slips opens, its newest in sight`, `${median(opened).toFixed(0)} ms`, null, null, '< 200 ms', median(opened) < 200],
      ['the same, scrolled: frames dropped of 175 (raw: a bare list)', String(median(ours)), String(median(bare)), null, '0', median(ours) === 0],
    ];
  } finally {
    await browser.close();
  }
}
