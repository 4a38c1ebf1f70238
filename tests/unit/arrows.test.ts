import { describe, expect, it } from 'vitest';
import { brokenArrows, overlongFiles, roomOf, ROOMS, sourceFiles, strayedOutside, strayedSql } from '../arrows.ts';
import type { SourceFile } from '../arrows.ts';

const files = sourceFiles(new URL('../..', import.meta.url).pathname.replace(/\/$/, ''));
const file = (path: string, text: string): SourceFile[] => [{ path, text }];

describe('the repository', () => {
  it('is read whole', () => {
    expect(files.length).toBeGreaterThan(200);
    for (const house of ['shared', 'server', 'kiosk', 'demo-data', 'tests']) expect(files.some(({ path }) => path.startsWith(`${house}/`)), house).toBe(true);
  });
  it('keeps to the arrows between its rooms', () => expect(brokenArrows(files)).toEqual([]));
  it('has SQL in the journal and the read models alone', () => expect(strayedSql(files)).toEqual([]));
  it('has no clock, dice, disk or network in shared', () => expect(strayedOutside(files)).toEqual([]));
  it('has no file of more than 300 lines', () => {
    expect(overlongFiles(files)).toEqual([]);
  });
});

describe('the table of arrows', () => {
  it.each([
    { path: 'kiosk/bench/bench-list.ts', imports: '../../server/people/rights.ts', room: 'server/people' },
    { path: 'server/http/pages.ts', imports: '../../kiosk/parts/gh-slip.ts', room: 'kiosk/parts' },
    { path: 'shared/traveller/lot/decide.ts', imports: '../../words/index.ts', room: 'shared/words' },
    { path: 'shared/traveller/lot/decide.ts', imports: '../../wire/reply.ts', room: 'shared/wire' },
    { path: 'shared/sampling/risk/oc.ts', imports: '../../traveller/index.ts', room: 'shared/traveller' },
    { path: 'shared/sampling/risk/oc.ts', imports: '../../metrology/summary/index.ts', room: 'shared/metrology' },
    { path: 'shared/wire/command-schema.ts', imports: '../words/index.ts', room: 'shared/words' },
    { path: 'kiosk/parts/gh-slip.ts', imports: '../../shared/words/index.ts', room: 'shared/words' },
    { path: 'demo-data/history.ts', imports: '../server/journal/journal.ts', room: 'server/journal' },
    { path: 'server/http/readers.ts', imports: '../../demo-data/people.ts', room: 'demo-data' },
    { path: 'server/journal/journal.ts', imports: '../../shared/traveller/index.ts', room: 'shared/traveller' },
  ])('forbids $path → $imports and says what to do', ({ path, imports, room }) => {
    const [said = '', ...more] = brokenArrows(file(path, `import type { A } from './a.ts';\nimport { b } from '${imports}';\n`));
    expect(more).toEqual([]);
    expect(said).toMatch(new RegExp(`^${path.replaceAll('.', '\\.')} imports ${room}/.*\\. [A-Z].{20,}\\.$`));
  });

  it('sees every form of import', () => {
    const to = '../../server/door/door.ts';
    for (const text of [`import '${to}';`, `import d from '${to}';`, `import {\n  a,\n  b,\n} from '${to}';`, `export * from '${to}';`, `export type { D } from '${to}';`, `const d = await import('${to}');`, `type D = import('${to}').D;`]) {
      expect(brokenArrows(file('kiosk/bench/x.ts', text)), text).toHaveLength(1);
    }
    expect(brokenArrows(file('kiosk/bench/x.ts', `// import d from '${to}';\n/* import d from '${to}'; */`))).toEqual([]);
  });

  it('allows what the rooms are for', () => {
    for (const [path, to] of [['kiosk/bench/x.ts', '../../shared/traveller/index.ts'], ['server/demo.ts', '../demo-data/history.ts'], ['server/walk/one-lot.ts', '../../demo-data/plans.ts'], ['tests/unit/x.test.ts', '../../server/door/door.ts'], ['shared/words/x.ts', '../traveller/index.ts']] as const) {
      expect(brokenArrows(file(path, `import { a } from '${to}';`)), path).toEqual([]);
    }
  });

  it('keeps packages out of the rules', () => {
    expect(brokenArrows(file('shared/traveller/x.ts', "import { z } from 'zod';"))).toHaveLength(1);
    expect(brokenArrows(file('shared/traveller/x.ts', "import { readFileSync } from 'node:fs';"))).toHaveLength(1);
    expect(brokenArrows(file('shared/wire/x.ts', "import { z } from 'zod';"))).toEqual([]);
  });

  it('asks for a room for every file', () => {
    expect(brokenArrows(file('shared/misc/x.ts', ''))).toEqual([expect.stringContaining('stands in no room')]);
    expect(roomOf('server/walk/one-lot.ts')).toBe('server/walk');
    for (const { uses } of Object.values(ROOMS)) for (const place of uses) expect(place === 'dist' || Object.keys(ROOMS).some((room) => room === place || room.startsWith(`${place}/`)), place).toBe(true);
  });

  it('finds SQL, clocks, dice and long files where they do not belong', () => {
    expect(strayedSql(file('server/http/x.ts', 'db.prepare(`SELECT a, b\n FROM slips WHERE c = 1`)'))).toHaveLength(1);
    expect(strayedSql(file('server/http/x.ts', "say('Select a lot from the list and update it');"))).toEqual([]);
    expect(strayedSql(file('server/readmodels/x.ts', 'db.prepare(`DELETE FROM rows`)'))).toEqual([]);
    for (const text of ['Date.now()', 'new Date()', 'Math.random()', 'fetch(address)', 'process.env', 'setTimeout(f)']) expect(strayedOutside(file('shared/traveller/x.ts', text)), text).toHaveLength(1);
    expect(strayedOutside(file('shared/words/x.ts', "new Date(iso); 'the process is steady'"))).toEqual([]);
    expect(strayedOutside(file('server/x.ts', 'Date.now()'))).toEqual([]);
    expect(overlongFiles(file('kiosk/x.ts', '\n'.repeat(301)))).toEqual([expect.stringContaining('301 lines')]);
    expect(overlongFiles(file('kiosk/x.ts', '\n'.repeat(300)))).toEqual([]);
  });
});
