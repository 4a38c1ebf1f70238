import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

/** Debian packages the tests look at documents and pages with, by the file that shows they are there. The face is the one the pictures in docs are taken with. */
const PACKAGES = {
  chromium: '/usr/bin/chromium', 'poppler-utils': '/usr/bin/pdftotext', qpdf: '/usr/bin/qpdf', 'fonts-dejavu-core': '/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf',
};

/**
 * Provides the browser and the document tools. Root on Debian gets both from there; anybody else gets a browser from Playwright's installer. Where something is
 * still lacking this says what to install, and answers null. Otherwise it answers the path of the browser; empty for Playwright's own.
 */
export function provideTools() {
  const missing = Object.entries(PACKAGES).filter(([, file]) => !existsSync(file)).map(([name]) => name);
  if (missing.length > 0 && isRoot() && existsSync('/usr/bin/apt-get')) {
    console.log(`Installing ${missing.join(', ')} from Debian`);
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    spawnSync('apt-get', ['update', '-qq'], { stdio: 'inherit', env });
    spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...missing], { stdio: ['ignore', 'ignore', 'inherit'], env });
  }
  // The tools are asked for first: a browser is a large thing to fetch for tests that will not run.
  const tools = ['pdftotext', 'qpdf'].filter((program) => spawnSync('which', [program]).status !== 0).map((program) => (program === 'qpdf' ? 'qpdf' : 'poppler-utils'));
  const browser = tools.length > 0 ? null : browserPath();
  if (browser !== null) return browser;
  console.error([
    'The tests need a browser and two document tools, and this account may not install all of them. As root:',
    ...(tools.length > 0 ? [`  apt-get install ${tools.join(' ')}`] : []),
    ...(tools.length > 0 && (existsSync(PACKAGES.chromium) || browserStarts()) ? [] : ['  apt-get install chromium      (or, beside "npx playwright install chromium", what it lacks: npx playwright install-deps chromium)']),
    'Nothing was tested. Install them and run npm test again.',
  ].join('\n'));
  return null;
}

function isRoot() {
  return typeof process.getuid === 'function' && process.getuid() === 0;
}

/** Debian's browser or the one named; else Playwright's own, fetched where it is not there; null where that does not start. */
function browserPath() {
  const given = [process.env.GATEHAND_CHROMIUM, PACKAGES.chromium, '/usr/bin/chromium-browser'].find((path) => path && existsSync(path));
  if (given) return given;
  if (browserStarts()) return '';
  const fetched = spawnSync('npx', ['playwright', 'install', 'chromium'], { stdio: 'inherit' });
  return fetched.status === 0 && browserStarts() ? '' : null;
}

/** A browser that was fetched may still lack libraries of the system, which shows only when it is started. */
function browserStarts() {
  const start = `import('playwright').then(async ({ chromium }) => (await chromium.launch({ args: ['--no-sandbox'] })).close()).catch(() => process.exit(1))`;
  return spawnSync(process.execPath, ['--input-type=module', '-e', start]).status === 0;
}
