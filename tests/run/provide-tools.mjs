import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

/** Debian packages the tests look at documents and pages with, by the program that shows they are there. */
const PACKAGES = { chromium: '/usr/bin/chromium', 'poppler-utils': '/usr/bin/pdftotext', qpdf: '/usr/bin/qpdf' };

/**
 * Provides the browser and the document tools: from Debian as root, otherwise the browser by the browser tool's own installer,
 * otherwise a clear instruction and exit code 2. Returns the path of the browser; empty for the browser tool's own.
 */
export function provideTools() {
  const missing = Object.entries(PACKAGES).filter(([, program]) => !existsSync(program)).map(([name]) => name);
  if (missing.length > 0 && isRoot() && existsSync('/usr/bin/apt-get')) {
    console.log(`Installing ${missing.join(', ')} from Debian`);
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    spawnSync('apt-get', ['update', '-qq'], { stdio: 'inherit', env });
    spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', ...missing], { stdio: ['ignore', 'ignore', 'inherit'], env });
  }
  const browser = browserPath();
  const lacking = ['poppler-utils', 'qpdf'].filter((name) => !found(PACKAGES[name]));
  if (browser === null || lacking.length > 0) {
    console.error([
      'The tests need a browser and two document tools, and this account may not install them.',
      ...(browser === null ? ['  A browser:        apt-get install chromium   (as root), or   npx playwright install chromium'] : []),
      ...(lacking.length > 0 ? [`  Document tools:   apt-get install ${lacking.join(' ')}   (as root)`] : []),
      'Nothing was tested. Install them and run npm test again.',
    ].join('\n'));
    process.exit(2);
  }
  return browser;
}

function isRoot() {
  return typeof process.getuid === 'function' && process.getuid() === 0;
}

function found(program) {
  const name = program.split('/').at(-1);
  return existsSync(program) || spawnSync('which', [name]).status === 0;
}

function browserPath() {
  const given = [process.env.GATEHAND_CHROMIUM, '/usr/bin/chromium', '/usr/bin/chromium-browser'].find((path) => path && existsSync(path));
  if (given) return given;
  try {
    execFileSync('npx', ['playwright', 'install', 'chromium'], { stdio: 'inherit' });
    return '';
  } catch {
    return null;
  }
}
