import {
  boxIdentifiers, endOfTransmission, groupSeparator, messageHeader, recordSeparator,
  type BoxCodeFault, type BoxCodeFields, type BoxIdentifier,
} from './box-code-fields.ts';
import { boxValueFault } from './box-value-fault.ts';

export type BoxCodeRead =
  | { readonly ok: true; readonly fields: BoxCodeFields }
  | { readonly ok: false; readonly why: BoxCodeFault };

/**
 * Reads what a scanner sent. Nothing is mended: a text that is not exactly one format-06 record of our identifiers is refused with its
 * reason. An end-of-line a scanner adds after the code must be taken off before.
 * @see ISO/IEC 15434 (envelope), ANSI MH10.8.2 (identifiers)
 */
export function readBoxCode(text: string): BoxCodeRead {
  const body = openEnvelope(text);
  return typeof body === 'string' ? readFields(body.split(groupSeparator)) : { ok: false, why: body };
}

/** The fields between `06 GS` and `RS EOT`, still parted by GS; or what is wrong with the frame. */
function openEnvelope(text: string): string | BoxCodeFault {
  const hasSeparators = [...text].some((c) => c === groupSeparator || c === recordSeparator);
  if (!hasSeparators && /^(\[\)>)?06/.test(text)) return { code: 'separatorsLost' };
  if (!text.startsWith(messageHeader)) return { code: 'noMessageHeader' };
  const record = text.slice(messageHeader.length);
  const format = record.slice(0, 2);
  if (format !== '06') return { code: 'formatIsNot06', format };
  if (!record.includes(groupSeparator)) return { code: 'separatorsLost' };
  if (!record.startsWith(groupSeparator, 2)) return { code: 'noSeparatorAfterFormat' };
  const end = record.indexOf(endOfTransmission);
  if (end < 0) return { code: 'noEndOfTransmission' };
  const after = record.slice(end + 1);
  if (after !== '') return { code: after.startsWith(messageHeader) ? 'severalRecords' : 'textAfterEnd' };
  if (record[end - 1] !== recordSeparator) return { code: 'noFormatTrailer' };
  const body = record.slice(3, end - 1);
  if (body.includes(recordSeparator)) return { code: 'severalRecords' };
  return body.endsWith(groupSeparator) ? { code: 'separatorBeforeTrailer' } : body;
}

function readFields(written: readonly string[]): BoxCodeRead {
  const values = new Map<BoxIdentifier, string>();
  for (const text of written) {
    const field = readField(text);
    if ('code' in field) return { ok: false, why: field };
    const { identifier, value } = field;
    if (values.has(identifier)) return { ok: false, why: { code: 'identifierTwice', identifier } };
    // One long run of characters where several fields should stand: the scanner swallowed what parts them.
    if (written.length === 1) return { ok: false, why: { code: 'separatorsLost' } };
    const fault = boxValueFault(identifier, value);
    if (fault !== null) return { ok: false, why: fault };
    values.set(identifier, value);
  }
  return fieldsFrom(values);
}

function readField(text: string): { readonly identifier: BoxIdentifier; readonly value: string } | BoxCodeFault {
  if (text === '') return { code: 'emptyField' };
  const head = /^[0-9]{0,3}[A-Za-z]/.exec(text)?.[0];
  if (head !== undefined && head !== head.toUpperCase()) return { code: 'identifierInLowerCase', identifier: head };
  const identifier = boxIdentifiers.find((known) => known === head);
  return identifier === undefined ? { code: 'identifierNotOurs', text } : { identifier, value: text.slice(identifier.length) };
}

function fieldsFrom(values: ReadonlyMap<BoxIdentifier, string>): BoxCodeRead {
  const missing = (identifier: BoxIdentifier): BoxCodeRead => ({ ok: false, why: { code: 'identifierMissing', identifier } });
  const [item, lot, serial, quantity, packedOn, producedOn, country] = boxIdentifiers.map((identifier) => values.get(identifier));
  if (item === undefined) return missing('1P');
  if (lot === undefined) return missing('1T');
  if (quantity === undefined) return missing('Q');
  if (packedOn === undefined && producedOn === undefined) return missing('9D');
  return {
    ok: true,
    fields: {
      item, lot, quantity: Number(quantity),
      ...(serial === undefined ? {} : { serial }),
      ...(packedOn === undefined ? {} : { packedOn: withDashes(packedOn) }),
      ...(producedOn === undefined ? {} : { producedOn: withDashes(producedOn) }),
      ...(country === undefined ? {} : { country }),
    },
  };
}

function withDashes(day: string): string {
  return `${day.slice(0, 4)}-${day.slice(4, 6)}-${day.slice(6)}`;
}
