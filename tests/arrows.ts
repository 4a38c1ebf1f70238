import { readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';

/** A source file as the arrows see it; paths count from the root of the repository, with forward slashes. */
export interface SourceFile { readonly path: string; readonly text: string }

/**
 * The table of arrows: what each room may import beside itself. A file belongs to the longest path that leads to it. What a room may use
 * may be a room, or a whole house such as `shared`. Packages: which ones of the registry a room may use; left out, any.
 */
export const ROOMS: Readonly<Record<string, { readonly uses: readonly string[]; readonly packages?: readonly string[]; readonly instead: string }>> = {
  'shared/ground': { uses: [], packages: [], instead: 'The ground knows no one: take what it needs as an argument, or move the file to the room that owns the subject.' },
  'shared/sampling': { uses: ['shared/sampling/chance', 'shared/ground'], packages: [], instead: 'Statistics know no lot and no gauge: take numbers as arguments and let shared/traveller bring them.' },
  // Distributions are the ground of all statistics, whether of samples or of gauges.
  'shared/sampling/chance': { uses: ['shared/ground'], packages: [], instead: 'A distribution knows neither plan nor gauge: take numbers as arguments.' },
  'shared/metrology': { uses: ['shared/sampling/chance', 'shared/ground'], packages: [], instead: 'Statistics know no lot and no gauge: take numbers as arguments and let shared/traveller bring them.' },
  'shared/carbide': { uses: ['shared/ground'], packages: [], instead: 'Formulas know no lot: take numbers as arguments and let shared/traveller bring them.' },
  'shared/traveller': { uses: ['shared/sampling', 'shared/metrology', 'shared/carbide', 'shared/ground'], packages: [], instead: 'The rules know neither words nor wire: give a typed value and let shared/words say it, or move the shape to shared/wire.' },
  'shared/wire': { uses: ['shared/traveller', 'shared/ground'], packages: ['zod'], instead: 'The wire knows shapes only: move the rule to shared/traveller, the sentence to shared/words.' },
  // The door's refusals are shapes of the wire and have words like those of the rules.
  'shared/words': { uses: ['shared/traveller', 'shared/wire', 'shared/sampling', 'shared/carbide', 'shared/ground'], packages: [], instead: 'Words say what has been decided: move the rule to shared/traveller.' },
  'demo-data': { uses: ['shared'], packages: ['node:crypto'], instead: 'The invented plant is made by the rules alone, and names files by their digest: let server/demo.ts bring it into the journal.' },
  'kiosk/parts': { uses: [], packages: ['lit', '@lit-labs/virtualizer'], instead: 'A part shows and reports; hand it ready-made words and values from the desk that uses it.' },
  'kiosk/theme': { uses: [], packages: [], instead: 'The theme is looks alone: set properties, and let the desk decide when.' },
  'kiosk/link': { uses: ['shared/traveller', 'shared/wire', 'shared/ground'], instead: 'The link carries commands and slips and shows nothing: move the words or the part to the desk.' },
  kiosk: { uses: ['kiosk', 'shared'], instead: 'A desk learns of the plant through slips and views: move the rule to shared/traveller, the shape to shared/wire.' },
  'server/journal': { uses: ['shared/ground'], instead: 'The journal keeps slips without knowing what they say: hand it text and names, and fold them in server/readmodels.' },
  'server/readmodels': { uses: ['server/journal', 'shared'], instead: 'Read models follow the journal: let the door or the pages ask them, not the other way round.' },
  'server/people': { uses: ['server/journal', 'shared'], instead: 'People and their PINs stand below the door: let the door call this room.' },
  'server/documents': { uses: ['shared'], instead: 'A document is drawn from data handed to it: collect the data in server/http and pass it in.' },
  server: { uses: ['server', 'shared'], instead: 'The server knows neither desks nor the invented plant: meet the kiosk in shared/wire; hand demo data in from server/demo.ts or server/walk.' },
  'server/demo.ts': { uses: ['server', 'shared', 'demo-data'], instead: 'Start the demo from the server’s own rooms.' },
  'server/walk.ts': { uses: ['server', 'shared', 'demo-data'], instead: 'The walk comes in by the public door, as any program would.' },
  'server/walk': { uses: ['server', 'shared', 'demo-data'], instead: 'The walk comes in by the public door, as any program would.' },
  tests: { uses: ['kiosk', 'server', 'shared', 'demo-data', 'dist'], instead: 'Tests look at the rooms of the program: copy reference data into tests/reference with its source.' },
};

const IMPORT = /(?:^|[\s;}])(?:import|export)\b[^'";]*?\bfrom\s*'([^']+)'|\bimport\s*\(?\s*'([^']+)'/g;
const within = (path: string, place: string): boolean => path === place || path.startsWith(`${place}/`);
/** The room a path belongs to, or null for what stands outside the table. */
export function roomOf(path: string): string | null {
  return Object.keys(ROOMS).filter((room) => within(path, room)).sort((one, other) => other.length - one.length)[0] ?? null;
}
/** Text without comments, so that words about a thing are not taken for the thing. */
function code(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|[^:'"`\\])\/\/.*$/gm, '$1');
}

/** Every import that the table does not allow, each with what to do about it. */
export function brokenArrows(files: readonly SourceFile[]): string[] {
  return files.flatMap(({ path, text }) => {
    const room = roomOf(path);
    const rules = room === null ? undefined : ROOMS[room];
    if (room === null || rules === undefined) return [`${path} stands in no room. Move it into one, or give its room a line in tests/arrows.ts.`];
    return [...code(text).matchAll(IMPORT)].flatMap(([, named, bare]) => {
      const target = named ?? bare ?? '';
      if (!target.startsWith('.')) return rules.packages === undefined || rules.packages.some((name) => within(target, name)) ? [] : [`${path} imports the package ${target}. ${rules.instead}`];
      const to = posix.join(posix.dirname(path), target);
      const allowed = roomOf(to) === room || rules.uses.some((place) => within(to, place));
      return allowed ? [] : [`${path} imports ${to}. ${rules.instead}`];
    });
  });
}

const SQL = /\b(?:SELECT\s[\s\S]{1,200}?\sFROM\s|INSERT\s+(?:OR\s+\w+\s+)?INTO\s|UPDATE\s+\w+\s+SET\s|DELETE\s+FROM\s|CREATE\s+(?:TABLE|INDEX|UNIQUE)\b|PRAGMA\s+\w)/;
/** SQL anywhere but in the journal and the read models; tests may look into the store they test. */
export function strayedSql(files: readonly SourceFile[]): string[] {
  return files.filter(({ path, text }) => !['server/journal', 'server/readmodels', 'tests'].some((place) => within(path, place)) && SQL.test(code(text)))
    .map(({ path }) => `${path} holds SQL. Give server/journal or server/readmodels a function for it and call that.`);
}

const OUTSIDE = /\bDate\.now\b|\bnew Date\(\s*\)|\bMath\.random\b|\bcrypto\.|\bperformance\.|\bfetch\s*\(|\bprocess\.|\bsetTimeout\b|\bsetInterval\b|\blocalStorage\b|\bindexedDB\b|\bconsole\./g;
/** Clock, dice, disk and network in `shared`: what they say comes in with the command. */
export function strayedOutside(files: readonly SourceFile[]): string[] {
  return files.filter(({ path }) => within(path, 'shared')).flatMap(({ path, text }) =>
    [...code(text).matchAll(OUTSIDE)].map(([found]) => `${path} uses ${found}. Shared rooms are pure: let the stamp or the caller bring what the clock, the dice or the network say.`));
}

export const MOST_LINES = 300;
/** Files too long to hold one subject, `allowed` ones apart, each with its own limit. */
export function overlongFiles(files: readonly SourceFile[], allowed: Readonly<Record<string, number>> = {}): string[] {
  return files.flatMap(({ path, text }) => {
    const lines = text.split('\n').length - (text.endsWith('\n') ? 1 : 0);
    return lines <= (allowed[path] ?? MOST_LINES) ? [] : [`${path} has ${lines} lines. Look for the second subject inside and give it a file of its own.`];
  });
}

/** Every TypeScript file of the repository, declarations of packages and built files left out. */
export function sourceFiles(root: string): readonly SourceFile[] {
  return ['shared', 'server', 'kiosk', 'demo-data', 'tests'].flatMap((house) => readdirSync(`${root}/${house}`, { recursive: true, encoding: 'utf8' })
    .map((name) => `${house}/${name.replaceAll('\\', '/')}`).filter((path) => path.endsWith('.ts'))
    .map((path) => ({ path, text: readFileSync(`${root}/${path}`, 'utf8') })));
}
