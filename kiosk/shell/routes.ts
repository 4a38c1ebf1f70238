import type { Role } from '../../shared/traveller/index.ts';

/** Where the page is: `/traveller/lot/L26-0001?work` has the desk `traveller` and the parts `lot`, `L26-0001`. */
export interface Route {
  readonly desk: string;
  readonly parts: readonly string[];
  readonly query: URLSearchParams;
  /** Path with query, as in the address line. */
  readonly path: string;
}
export type DeskName = 'bench' | 'traveller' | 'lab' | 'release' | 'packing' | 'presses' | 'plans' | 'charts' | 'gauges' | 'trace' | 'keeper';
export interface Desk {
  readonly name: DeskName;
  /** Who finds it among the tabs. The server decides what each may do there. */
  readonly roles: readonly Role[];
  readonly density: 'bench' | 'desk';
}

const EVERYONE: readonly Role[] = ['inspector', 'lab', 'engineer', 'releaser', 'packer', 'keeper'];

/** The desks in the order of their tabs. Each is `kiosk/<name>/gh-<name>-desk.ts`, an element `gh-<name>-desk` with a property `route`. */
export const DESKS: readonly Desk[] = [
  { name: 'bench', roles: ['inspector', 'lab', 'engineer'], density: 'bench' },
  { name: 'presses', roles: ['inspector', 'engineer', 'keeper'], density: 'bench' },
  { name: 'lab', roles: ['lab', 'engineer'], density: 'bench' },
  { name: 'release', roles: ['releaser', 'engineer'], density: 'desk' },
  { name: 'packing', roles: ['packer'], density: 'bench' },
  { name: 'plans', roles: ['engineer'], density: 'desk' },
  { name: 'charts', roles: ['engineer', 'lab'], density: 'desk' },
  { name: 'gauges', roles: ['keeper', 'lab', 'engineer', 'inspector'], density: 'desk' },
  { name: 'trace', roles: EVERYONE, density: 'desk' },
  { name: 'keeper', roles: ['keeper'], density: 'desk' },
  { name: 'traveller', roles: EVERYONE, density: 'bench' },
];
/** Desks that have a tab of their own. */
export const TABS = DESKS.filter((desk): desk is Desk & { readonly name: Exclude<DeskName, 'traveller'> } => desk.name !== 'traveller');

/** How large things are at an address: measuring in a gauge study is work at the bench, at whichever desk. */
export function densityAt({ density }: Desk, { desk, parts }: Route): Desk['density'] {
  return desk === 'gauges' && parts[0] === 'studies' && parts[2] === 'measure' ? 'bench' : density;
}

/** Reads an address. */
export function routeOf(path: string): Route {
  const [address = '', query = ''] = path.split('?');
  const [desk = '', ...parts] = address.split('/').filter((part) => part !== '').map(decoded);
  return { desk, parts, query: new URLSearchParams(query), path };
}

// A hand-typed address may hold a lone percent sign; it is then taken as it stands.
function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

/** The first desk of a person with these roles. */
export function homeOf(roles: readonly Role[]): string {
  const home: readonly (readonly [Role, DeskName])[] = [['inspector', 'bench'], ['lab', 'lab'], ['packer', 'packing'], ['engineer', 'bench'], ['releaser', 'release'], ['keeper', 'keeper']];
  return `/${home.find(([role]) => roles.includes(role))?.[1] ?? 'trace'}`;
}

/** Address of a subject's traveller. */
export function travellerPath(kind: string, id: string): string {
  return `/traveller/${kind}/${encodeURIComponent(id)}`;
}
