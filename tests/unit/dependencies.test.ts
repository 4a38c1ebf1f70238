import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';

const names = z.record(z.string(), z.string()).transform((packages) => Object.keys(packages).sort());
const manifest = z.object({ dependencies: names, devDependencies: names }).parse(JSON.parse(readFileSync('package.json', 'utf8')));
const page = readFileSync('docs/dependencies.md', 'utf8');

/** Packages named in the first column of the table under a heading. */
function listedUnder(heading: string): string[] {
  const section = page.split(/^## /m).find((each) => each.startsWith(heading)) ?? '';
  return [...section.matchAll(/^\| `([^`]+)` \| [^|]+ \| [^|]+ \|$/gm)].map(([, name = '']) => name).sort();
}

describe('docs/dependencies.md', () => {
  it('names every dependency of the server and the kiosk with its licence and reason, and no other', () => {
    expect(listedUnder('At run time')).toEqual(manifest.dependencies);
  });
  it('names every dependency of building and testing with its licence and reason, and no other', () => {
    expect(listedUnder('For building and testing')).toEqual(manifest.devDependencies);
  });
});
