import { z } from 'zod';
import { needsSignature, RIGHTS } from '../traveller/index.ts';
import type { CommandType } from '../traveller/index.ts';
import { gaugeUsesSchema, processSchema, recalledReadingsSchema, recallViewSchema } from './gauge-views.ts';
import { catalogueAnswerSchema, certificateVerdictSchema, handedInSchema, handInSchema, healthSchema, hitsSchema, peopleSchema, plantSchema, refusedSchema, rowsSchema, slipsSchema, stateAnswerSchema, switchingRowsSchema, travellerSchema, verificationSchema, writtenSchema } from './answer-schemas.ts';
import { certificateDataSchema } from './certificate-data.ts';
import { commandExamples } from './command-examples.ts';
import { commandSchema, envelopeSchema } from './command-schema.ts';
import { ENDPOINTS, PATH_PARAMETERS } from './openapi-endpoints.ts';
import type { Endpoint, Parameter } from './openapi-endpoints.ts';
import { cautionsSchema } from './cautions-view.ts';
import { chartLotsSchema, chartsSchema } from './charts-view.ts';
import { ownTablesSchema } from './own-tables-view.ts';
import { planLotsSchema } from './plan-lots-view.ts';
import { REFUSAL_STATUS } from './refusal-status.ts';
import { studiesSchema } from './studies-view.ts';
import { signInSchema } from './sign-in-schema.ts';
import { benchListSchema, sessionSchema, stampedSlipSchema, traceSchema } from './views.ts';

/** Plain JSON. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json };
type JsonObject = { readonly [key: string]: Json };

/** Every status a refusal may have, told by its codes. */
const STATUSES = [...new Set(Object.values(REFUSAL_STATUS))].sort((a, b) => a - b);
const codesOf = (status: number): string[] => Object.entries(REFUSAL_STATUS).flatMap(([code, its]) => (its === status ? [code] : []));
const ref = (kind: 'schemas' | 'responses', name: string): JsonObject => ({ $ref: `#/components/${kind}/${name}` });

/** The description of the whole interface, OpenAPI 3.1, made from the very schemas that read what comes in. Plain JSON, the same each time. */
export function openApiDocument(): JsonObject {
  return {
    openapi: '3.1.0',
    info: {
      title: 'Gatehand', version: '1', license: { name: 'Apache-2.0', identifier: 'Apache-2.0' },
      description: 'Inspection and release of cemented-carbide insert lots. Commands are written as slips on the threads of lots, batches and charges; everything else is read from them. Every "no" is a refusal with a code for programs and three sentences for people; docs/refusals.md has one section a code.',
    },
    security: [{ cookie: [] }, { bearer: [] }],
    paths: paths(),
    components: {
      securitySchemes: { cookie: { type: 'apiKey', in: 'cookie', name: 'gatehand' }, bearer: { type: 'http', scheme: 'bearer' } },
      schemas: { ...commandSchemas(), ...answerSchemas() },
      responses: Object.fromEntries(STATUSES.map((status) => [`Refused${status}`, refusedResponse(status)])),
    },
  };
}

function paths(): JsonObject {
  const byPath = new Map<string, Record<string, Json>>();
  for (const endpoint of ENDPOINTS) byPath.set(endpoint.path, { ...byPath.get(endpoint.path), [endpoint.method]: operation(endpoint) });
  return Object.fromEntries(byPath);
}

function operation(endpoint: Endpoint): JsonObject {
  const { method, path, tag, summary, answer, open } = endpoint;
  const refused = [...new Set([...endpoint.refuses, ...(open === true ? [] : [401]), 429, 503])].sort((a, b) => a - b);
  const words = path.replace('/api/', '').split(/[/.]/).map((part) => part.replace(/[{}]/g, '')).filter((part) => part !== '');
  const parameters = [...pathParameters(path), ...(endpoint.query ?? []).map((parameter) => parameterOf(parameter, 'query'))];
  return {
    operationId: [method, ...words].join('_'), tags: [tag], summary,
    ...(open === true ? { security: [] } : {}),
    ...(parameters.length === 0 ? {} : { parameters }),
    ...requestBody(endpoint),
    responses: { ...answered(answer), ...Object.fromEntries(refused.map((status) => [String(status), ref('responses', `Refused${status}`)])) },
  };
}

function answered(answer: Endpoint['answer']): JsonObject {
  if (answer === null) return { '204': { description: 'Done' } };
  if ('schema' in answer) return { '200': { description: 'Answer', content: { 'application/json': { schema: ref('schemas', answer.schema) } } } };
  return { '200': { description: 'Document', content: { [answer.media]: {} } } };
}

function requestBody({ asks, asksMedia }: Endpoint): JsonObject {
  if (asksMedia !== undefined) return { requestBody: { required: true, content: { [asksMedia]: {} } } };
  if (asks === undefined) return {};
  const examples = asks === 'Envelope' ? Object.fromEntries(Object.values(commandExamples).map((command) => [command.type, { value: envelopeExample(command.type) }])) : { signOn: { value: { badge: 'P-07', pin: '204060', bench: 'Dimensions 1' } } };
  return { requestBody: { required: true, content: { 'application/json': { schema: ref('schemas', asks), examples } } } };
}

function envelopeExample(type: CommandType): JsonObject {
  return { clientId: `kiosk-3-${type}`, bench: 'Dimensions 1', command: plainJson(commandExamples[type]), ...(needsSignature(type) ? { pin: '204060' } : {}) };
}

function pathParameters(path: string): JsonObject[] {
  const [, , first = ''] = path.split('/');
  return [...path.matchAll(/\{(\w+)\}/g)].map(([, name = '']) => parameterOf(PATH_PARAMETERS[`${first}/${name}`] ?? PATH_PARAMETERS[name] ?? { name, meaning: name }, 'path'));
}

function parameterOf({ name, meaning, needed, whole, values }: Parameter, where: 'path' | 'query'): JsonObject {
  return { name, in: where, required: where === 'path' || needed === true, description: meaning, schema: { type: whole === true ? 'integer' : 'string', ...(values === undefined ? {} : { enum: [...values] }) } };
}

function refusedResponse(status: number): JsonObject {
  const [code = ''] = codesOf(status);
  const example: JsonObject = { ok: false, refusal: { code }, words: { happened: 'What happened.', kept: 'What was kept.', next: 'What to do next.' } };
  return { description: `Refused: ${codesOf(status).join(', ')}`, content: { 'application/json': { schema: ref('schemas', 'Refused'), example } } };
}

/** One schema a command, named `Command_takeReading`, and the union of them all. */
function commandSchemas(): JsonObject {
  const named = commandSchema.options.map((option) => {
    const { value: type } = option.shape.type;
    return [`Command_${type}`, { ...schemaOf(option), description: `${givenBy(type)}${needsSignature(type) ? ' Signed: the PIN goes with it.' : ''}`, examples: [plainJson(commandExamples[type])] }] as const;
  });
  const mapping = Object.fromEntries(named.map(([name]) => [name.replace('Command_', ''), `#/components/schemas/${name}`]));
  const command: JsonObject = { oneOf: named.map(([name]) => ref('schemas', name)), discriminator: { propertyName: 'type', mapping } };
  const envelope = schemaOf(envelopeSchema);
  const properties = envelope['properties'];
  return { ...Object.fromEntries(named), Command: command, Envelope: { ...envelope, properties: { ...(isObject(properties) ? properties : {}), command: ref('schemas', 'Command') } } };
}

function givenBy(type: CommandType): string {
  const right: string | readonly string[] = RIGHTS[type];
  if (right === 'anyone') return 'Given by anyone.';
  return right === 'gate' ? 'Given by the roles that the plan names for the gate.' : `Given by: ${typeof right === 'string' ? right : right.join(', ')}.`;
}

function answerSchemas(): JsonObject {
  const answers = {
    SignIn: signInSchema, Session: sessionSchema, Written: writtenSchema, Refused: refusedSchema, Plant: plantSchema, BenchList: benchListSchema, Traveller: travellerSchema, Slips: slipsSchema,
    StateAnswer: stateAnswerSchema, Catalogue: catalogueAnswerSchema, People: peopleSchema, SwitchingRows: switchingRowsSchema, GaugeUses: gaugeUsesSchema, Process: processSchema, Recall: recallViewSchema, RecalledReadings: recalledReadingsSchema, Rows: rowsSchema, Trace: traceSchema, Hits: hitsSchema, Slip: stampedSlipSchema,
    PlanLots: planLotsSchema, Studies: studiesSchema, OwnTables: ownTablesSchema, Cautions: cautionsSchema, Charts: chartsSchema, ChartLots: chartLotsSchema, HandIn: handInSchema, HandedIn: handedInSchema, Verification: verificationSchema, Health: healthSchema, Certificate: certificateDataSchema, CertificateVerdict: certificateVerdictSchema,
  };
  return Object.fromEntries(Object.entries(answers).map(([name, schema]) => [name, schemaOf(schema)]));
}

function schemaOf(schema: z.ZodType): JsonObject {
  const { $schema: _, ...made } = z.toJSONSchema(schema, { target: 'draft-2020-12' });
  const json = plainJson(made);
  return isObject(json) ? json : {};
}

function isObject(json: Json | undefined): json is JsonObject {
  return typeof json === 'object' && json !== null && !Array.isArray(json);
}

/** What JSON would keep of a value: the library's own marks on it do not count. */
function plainJson(value: unknown): Json {
  const json: Json = JSON.parse(JSON.stringify(value));
  return json;
}
