import type { Session } from '../../shared/wire/views.ts';
import { isPaper, malformed, refused, type Answer, type Paper } from './answer.ts';
import type { Plant } from './plant.ts';
import { acts, readers } from './readers.ts';
import { matchRoute, type Matched, type PaperReader, type Reader } from './route.ts';

/** Longest question; the code on a label is some hundred characters. */
const longestPath = 2_000;

/** Answers a question put as an address, such as `/api/bench?bench=Lab`. @param papers what may be answered with a document; none over the live channel */
export async function ask(plant: Plant, address: string, session: Session | null, papers: readonly PaperReader[] = []): Promise<Answer | Paper> {
  return answerFrom([...readers, ...papers], plant, address, session);
}

/** Carries out what is done by POST beside the commands; null where nothing of the kind stands at this address. */
export async function act(plant: Plant, address: string, session: Session | null): Promise<Answer | null> {
  if (!isAct(address)) return null;
  const answer = await answerFrom(acts, plant, address, session);
  return isPaper(answer) ? null : answer;
}

/** Is there something that is done here by POST? */
export function isAct(address: string): boolean {
  return acts.some(({ path }) => path === address.split('?')[0]);
}

async function answerFrom(routes: readonly (Reader | PaperReader)[], plant: Plant, address: string, session: Session | null): Promise<Answer | Paper> {
  if (address.length > longestPath || !address.startsWith('/')) return malformed('path', 'must be an address such as /api/bench?bench=Lab');
  const [path = '', ...rest] = address.split('?');
  let matched: Matched<Reader | PaperReader> | null;
  try {
    matched = matchRoute(routes, path);
  } catch (fault) {
    if (fault instanceof URIError) return malformed('path', 'is not an address');
    throw fault;
  }
  if (matched === null) return refused({ code: 'unknownAddress', path });
  const { route, params } = matched;
  if (route.isOpen !== true && session === null) return refused({ code: 'notSignedIn' });
  if (route.roles !== undefined && session !== null && !session.roles.some((role) => route.roles?.includes(role))) return refused({ code: 'notYourRole', command: path, needed: route.roles });
  const question = { plant, params, query: new URLSearchParams(rest.join('?')), session };
  return 'read' in route ? route.read(question) : route.paint(question);
}

/** The same, for a wire that carries JSON alone. */
export async function askForJson(plant: Plant, address: string, session: Session | null): Promise<Answer> {
  const answer = await ask(plant, address, session);
  return isPaper(answer) ? refused({ code: 'unknownAddress', path: address }) : answer;
}
