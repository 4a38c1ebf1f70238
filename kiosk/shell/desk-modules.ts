/// <reference types="vite/client" />
import type { DeskName } from './routes.ts';

/** Every desk that is there; each is fetched when it is first opened. */
const modules = import.meta.glob('../*/gh-*-desk.ts');

/** Fetches a desk's code. @throws when it is not there or the network fails */
export async function loadDesk(name: DeskName): Promise<void> {
  const load = modules[`../${name}/gh-${name}-desk.ts`];
  if (load === undefined) throw new Error(`no desk ${name}`);
  await load();
}
