import { z } from 'zod';
import { envelopeSchema } from '../../shared/wire/command-schema.ts';
import { signInSchema } from '../../shared/wire/sign-in-schema.ts';
import { sessionSchema } from '../../shared/wire/views.ts';
import { readers } from './readers.ts';
import { paperReaders } from './papers.ts';
import { Painter } from './paint.ts';
import type { PaperReader, Reader } from './route.ts';
import * as view from './views.ts';

let made: unknown = null;

/** The description of the whole API (OpenAPI 3.1), made from the schemas that read and the table that answers, so that it cannot differ from them. */
export function openApi(): unknown {
  made ??= describe();
  return made;
}

const jsonOf = (schema: z.ZodType): unknown => ({ 'application/json': { schema: z.toJSONSchema(schema, { unrepresentable: 'any', io: 'input', target: 'draft-2020-12' }) } });
const refusal = { description: 'A refusal with its code and its words', content: { 'application/json': { schema: { $ref: '#/components/schemas/Refusal' } } } };

function describe(): unknown {
  const paths: Record<string, Record<string, unknown>> = {};
  for (const route of [...readers, ...paperReaders(new Painter())]) paths[route.path.replaceAll(/:(\w+)/g, '{$1}')] = { get: question(route) };
  const put = (path: string, method: string, described: unknown): void => void (paths[path] = { ...paths[path], [method]: described });
  put('/api/commands', 'post', { summary: 'Gives one command. `openPlant` needs nobody signed on while no plant is open.', requestBody: { required: true, content: jsonOf(envelopeSchema) }, responses: { 200: { description: 'Written and durable, or repeated', content: jsonOf(view.replyView) }, default: refusal } });
  put('/api/session', 'post', { summary: 'Signs a person on at a bench', security: [], requestBody: { required: true, content: jsonOf(signInSchema) }, responses: { 200: { description: 'Signed on; the token also comes as a cookie', content: jsonOf(sessionSchema) }, default: refusal } });
  put('/api/session', 'delete', { summary: 'Signs off', responses: { 204: { description: 'Signed off' }, default: refusal } });
  put('/api/certificates/verify', 'post', { summary: 'Says what a certificate is worth', security: [], requestBody: { required: true, content: { 'application/pdf': { schema: { type: 'string', format: 'binary' } } } }, responses: { 200: { description: 'The verdict', content: jsonOf(view.certificateVerdictView) }, default: refusal } });
  return {
    openapi: '3.1.0',
    info: { title: 'Gatehand', version: '0.1.0', description: 'Inspection and release of insert lots. Every GET is also answered over the live channel by `ask`, every command taken by `command`.', license: { name: 'Apache-2.0', identifier: 'Apache-2.0' } },
    security: [{ token: [] }, { cookie: [] }],
    paths,
    components: {
      schemas: { Refusal: z.toJSONSchema(view.noView) },
      securitySchemes: { token: { type: 'http', scheme: 'bearer' }, cookie: { type: 'apiKey', in: 'cookie', name: 'gatehand' } },
    },
  };
}

function question(route: Reader | PaperReader): unknown {
  const inPath = [...route.path.matchAll(/:(\w+)/g)].map(([, name]) => ({ name, in: 'path', required: true, schema: { type: 'string' } }));
  const inQuery = Object.entries(route.query ?? {}).map(([name, description]) => ({ name, in: 'query', required: false, description, schema: { type: 'string' } }));
  const content = 'answer' in route ? jsonOf(route.answer) : { [route.type]: { schema: { type: 'string', format: 'binary' } } };
  const forRoles = route.roles === undefined ? '' : ` For ${route.roles.join(' and ')}.`;
  return { summary: `${route.summary}.${forRoles}`, ...(route.isOpen === true ? { security: [] } : {}), parameters: [...inPath, ...inQuery], responses: { 200: { description: route.summary, content }, default: refusal } };
}
