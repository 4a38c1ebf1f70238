import { describe, expect, it } from 'vitest';
import { commandExamples } from '../../../shared/wire/command-examples.ts';
import { openApiDocument } from '../../../shared/wire/openapi.ts';
import type { Json } from '../../../shared/wire/openapi.ts';
import { ENDPOINTS } from '../../../shared/wire/openapi-endpoints.ts';
import { readCommand } from '../../../shared/wire/read-command.ts';
import { REFUSAL_STATUS } from '../../../shared/wire/refusal-status.ts';

const document = openApiDocument();
const METHODS = ['get', 'put', 'post', 'delete', 'options', 'head', 'patch', 'trace'];
type Fields = { readonly [key: string]: Json };

const isFields = (json: Json | undefined): json is Fields => typeof json === 'object' && json !== null && !Array.isArray(json);
const fields = (json: Json | undefined): Fields => (isFields(json) ? json : {});
const at = (...path: string[]): Json | undefined => path.reduce<Json | undefined>((json, step) => fields(json)[step], document);
const components = fields(document['components']);
const operations = Object.entries(fields(document['paths'])).flatMap(([path, item]) => Object.entries(fields(item)).map(([method, operation]) => ({ path, method, operation: fields(operation) })));

/** Every object in the document, with the way to it. */
function everyObject(json: Json, way = '#'): { readonly way: string; readonly object: Fields }[] {
  if (Array.isArray(json)) return json.flatMap((each: Json, index) => everyObject(each, `${way}/${index}`));
  return isFields(json) ? [{ way, object: json }, ...Object.entries(json).flatMap(([key, each]) => everyObject(each, `${way}/${key}`))] : [];
}

/** The contract between server and kiosk, address by address. */
const CONTRACT = `get /api/plant
post /api/session
get /api/session
delete /api/session
post /api/commands
get /api/bench
get /api/travellers/{kind}/{id}
get /api/travellers/{kind}/{id}/slips
get /api/states
get /api/slips
get /api/catalogue
get /api/studies
get /api/studies/{id}/readings.csv
get /api/studies/{id}/study.pdf
get /api/people
get /api/switching
get /api/release
get /api/packing
get /api/plans/{id}/lots
get /api/plans/{id}/versions/{planVersion}/plan.csv
get /api/plans/{id}/versions/{planVersion}/plan.pdf
get /api/tables
get /api/charts
get /api/charts/lots
get /api/cautions
get /api/process
get /api/gauges/{id}/uses
get /api/gauges/{id}/recalls/{recall}
get /api/gauges/{id}/recalls/{recall}/readings
get /api/gauges/{id}/recalls/{recall}/readings.csv
get /api/lots
get /api/ready/{kind}
get /api/charges
get /api/batches
get /api/trace/{kind}/{id}
get /api/search
get /api/journal/verify
get /api/health
get /api/openapi.json
get /api/lots/{id}/certificate.pdf
get /api/lots/{id}/certificate.json
get /api/lots/{id}/boxes/{serial}/label.pdf
get /api/lots/{id}/boxes/{serial}/label.png
get /api/lots/{id}/boxes/{serial}/label.svg
get /api/lots/{id}/boxes/{serial}/preview.svg
get /api/travellers/{kind}/{id}/traveller.pdf
get /api/travellers/{kind}/{id}/traveller.json
get /api/travellers/{kind}/{id}/traveller.csv
get /api/travellers/{kind}/{id}/hold-tag.pdf
post /api/attachments
get /api/attachments/{digest}/file.csv
post /api/certificates/verify`.split('\n');

describe('the description of the interface', () => {
  it('is OpenAPI 3.1 with the fields that its specification asks for (OpenAPI Specification 3.1.0, sections 4.8.1 and 4.8.2; from memory)', () => {
    expect(document['openapi']).toBe('3.1.0');
    expect(Object.keys(document).sort()).toEqual(['components', 'info', 'openapi', 'paths', 'security']);
    expect(fields(document['info'])).toMatchObject({ title: 'Gatehand', version: '1' });
    for (const name of Object.keys(components)) for (const key of Object.keys(fields(components[name]))) expect(key).toMatch(/^[a-zA-Z0-9._-]+$/);
  });

  it('names every address of the contract and no other', () => {
    expect(operations.map(({ method, path }) => `${method} ${path}`).sort()).toEqual([...CONTRACT].sort());
    expect(ENDPOINTS).toHaveLength(CONTRACT.length);
  });

  it.each(operations.map(({ method, path, operation }) => [`${method} ${path}`, path, method, operation] as const))('%s is whole', (_, path, method, operation) => {
    expect(METHODS).toContain(method);
    expect(operation['summary']).toMatch(/^.{5,}$/);
    const parameters = (Array.isArray(operation['parameters']) ? operation['parameters'] : []).map((each: Json) => fields(each));
    const inPath = [...path.matchAll(/\{(\w+)\}/g)].map(([, name]) => name);
    expect(parameters.filter(({ in: where }) => where === 'path').map(({ name }) => name)).toEqual(inPath);
    for (const parameter of parameters) {
      expect(Object.keys(parameter).sort()).toEqual(['description', 'in', 'name', 'required', 'schema']);
      if (parameter['in'] === 'path') expect(parameter['required']).toBe(true);
    }
    const responses = fields(operation['responses']);
    expect(Object.keys(responses).some((status) => /^2\d\d$/.test(status))).toBe(true);
    for (const [status, response] of Object.entries(responses)) {
      expect(status).toMatch(/^[245]\d\d$/);
      const told = fields(response);
      expect(typeof told['$ref'] === 'string' || typeof told['description'] === 'string').toBe(true);
      if (!status.startsWith('2')) expect(told['$ref']).toBe(`#/components/responses/Refused${status}`);
    }
  });

  it('has an operation name of its own for every operation', () => {
    const names = operations.map(({ operation }) => operation['operationId']);
    expect(new Set(names).size).toBe(names.length);
  });

  it('leads every reference to something that is there', () => {
    const references = everyObject(document).flatMap(({ object }) => (typeof object['$ref'] === 'string' ? [object['$ref']] : []));
    expect(references.length).toBeGreaterThan(100);
    for (const reference of new Set(references)) expect(at(...reference.slice(2).split('/')), reference).toBeDefined();
  });

  it('uses only types and patterns that JSON Schema 2020-12 knows', () => {
    for (const { way, object } of everyObject(components['schemas'] ?? {})) {
      if (typeof object['type'] === 'string' && !way.includes('/examples/') && !way.endsWith('/properties')) expect(['string', 'number', 'integer', 'boolean', 'object', 'array', 'null'], way).toContain(object['type']);
      if (typeof object['pattern'] === 'string') expect(() => new RegExp(String(object['pattern']), 'u')).not.toThrow();
      expect(Object.keys(object).filter((key) => key === '$schema' || key === 'nullable'), way).toEqual([]);
    }
  });

  it.each(Object.keys(commandExamples))('describes the command %s: strict, with every field and an example', (type) => {
    const schema = fields(at('components', 'schemas', `Command_${type}`));
    expect(schema['type']).toBe('object');
    expect(schema['additionalProperties']).toBe(false);
    expect(fields(fields(schema['properties'])['type'])['const']).toBe(type);
    expect(schema['required']).toContain('type');
    expect(schema['description']).toMatch(/^Given by/);
    expect(at('components', 'schemas', 'Command', 'discriminator', 'mapping', type)).toBe(`#/components/schemas/Command_${type}`);
    const example = at('paths', '/api/commands', 'post', 'requestBody', 'content', 'application/json', 'examples', type, 'value');
    expect(readCommand(example)).toMatchObject({ ok: true, envelope: { command: { type } } });
  });

  it('names every refusal under its status', () => {
    for (const [code, status] of Object.entries(REFUSAL_STATUS)) expect(String(at('components', 'responses', `Refused${status}`, 'description'))).toMatch(new RegExp(`\\b${code}\\b`));
  });

  it('is plain JSON and the same each time', () => {
    expect(JSON.parse(JSON.stringify(document))).toEqual(document);
    expect(openApiDocument()).toEqual(document);
  });
});
