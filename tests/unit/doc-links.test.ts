import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { describe, expect, it } from 'vitest';

const ELSEWHERE = new Set(['node_modules', 'dist', 'data', 'walk-output', '.git', 'results']);

function pagesIn(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return ELSEWHERE.has(entry.name) ? [] : pagesIn(path);
    return entry.name.endsWith('.md') ? [path] : [];
  });
}

/** A page's prose, without its fenced examples. */
function proseOf(page: string): string {
  return readFileSync(page, 'utf8').replace(/^```[\s\S]*?^```/gm, '');
}

/** Targets of links and pictures, without those that lead out of the repository or stay on the page. */
function linksOf(page: string): string[] {
  const prose = proseOf(page).replace(/`[^`\n]*`/g, '');
  const targets = [...prose.matchAll(/\]\(([^)\s]+)\)/g), ...prose.matchAll(/\b(?:src|srcset|href)="([^"]+)"/g)].map(([, target = '']) => target);
  return targets.filter((target) => !/^([a-z]+:|#)/i.test(target)).map((target) => target.split('#')[0] ?? '');
}

/** Files and folders of ours that a page names in code type. Patterns and addresses that stand for many are left out. */
function placesOf(page: string): string[] {
  return [...proseOf(page).matchAll(/`((?:shared|server|kiosk|demo-data|tests|docs)\/[\w./-]+)`/g)].map(([, place = '']) => place);
}

describe.each(pagesIn('.'))('%s', (page) => {
  it('links only to what is there', () => {
    expect(linksOf(page).filter((target) => !existsSync(normalize(join(dirname(page), target))))).toEqual([]);
  });
  it('names only files and folders that are there', () => {
    expect(placesOf(page).filter((place) => !existsSync(place))).toEqual([]);
  });
});
