import { z } from 'zod';
import { openApiDocument } from '../../shared/wire/openapi.ts';
import { acts, readers } from './readers.ts';
import { paperReaders } from './papers.ts';
import { Painter } from './paint.ts';
import type { PaperReader, Reader } from './route.ts';

let made: unknown = null;

/** The description of the whole API (OpenAPI 3.1), made from the schemas that read and the table that answers, so that it cannot differ from them. */
export function openApi(): unknown {
  made ??= describe();
  return made;
}

const jsonOf = (schema: z.ZodType): unknown => ({ 'application/json': { schema: z.toJSONSchema(schema, { unrepresentable: 'any', io: 'input', target: 'draft-2020-12' }) } });
const refusal = { description: 'A refusal with its code and its words', content: { 'application/json': { schema: { $ref: '#/components/schemas/Refused' } } } };

/** The contract's description, with each answer in the very shape the table answers in, and with the addresses that only the server has. */
function describe(): unknown {
  const contract = openApiDocument();
  const paths: Record<string, Record<string, unknown>> = Object.fromEntries(Object.entries(contract['paths'] ?? {}).map(([path, item]) => [path, { ...item }]));
  for (const route of [...readers, ...paperReaders(new Painter())]) {
    const path = route.path.replaceAll(/:(\w+)/g, '{$1}');
    const known = paths[path]?.['get'];
    const asked = question(route);
    paths[path] = { ...paths[path], get: typeof known === 'object' && known !== null ? { ...known, responses: { ...('responses' in known && typeof known.responses === 'object' ? known.responses : {}), 200: asked.responses[200] } } : asked };
  }
  for (const route of acts) paths[route.path.replaceAll(/:(\w+)/g, '{$1}')] = { post: question(route) };
  return { ...contract, paths };
}

function question(route: Reader | PaperReader) {
  const inPath = [...route.path.matchAll(/:(\w+)/g)].map(([, name]) => ({ name, in: 'path', required: true, schema: { type: 'string' } }));
  const inQuery = Object.entries(route.query ?? {}).map(([name, description]) => ({ name, in: 'query', required: false, description, schema: { type: 'string' } }));
  const content = 'answer' in route ? jsonOf(route.answer) : { [route.type]: { schema: { type: 'string', format: 'binary' } } };
  const forRoles = route.roles === undefined ? '' : ` For ${route.roles.join(' and ')}.`;
  return { summary: `${route.summary}.${forRoles}`, ...(route.isOpen === true ? { security: [] } : {}), parameters: [...inPath, ...inQuery], responses: { 200: { description: route.summary, content }, default: refusal } };
}
