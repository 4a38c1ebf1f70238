import { OutsideDomain } from '../../ground/outside-domain.ts';
import {
  boxFieldOf, boxIdentifiers, endOfTransmission, groupSeparator, messageHeader, recordSeparator,
  type BoxCodeFault, type BoxCodeFields, type BoxIdentifier,
} from './box-code-fields.ts';
import { boxValueFault } from './box-value-fault.ts';

/** Ask this before building from what people typed: what keeps these fields from standing in a code, or null. */
export function boxCodeFault(fields: BoxCodeFields): BoxCodeFault | null {
  if (fields.packedOn === undefined && fields.producedOn === undefined) return { code: 'identifierMissing', identifier: '9D' };
  for (const identifier of boxIdentifiers) {
    const value = valueFor(identifier, fields);
    const fault = value === null ? null : boxValueFault(identifier, value);
    if (fault !== null) return fault;
  }
  return null;
}

/**
 * The text of a box's code: an ISO/IEC 15434 envelope of format 06 around ISO/IEC 15418 data identifiers,
 * `[)> RS 06 GS 1P… GS 1T… GS S… GS Q… GS 9D… GS 16D… GS 4L… RS EOT`; absent fields are left out.
 * @throws OutsideDomain when `boxCodeFault` would name a fault: a caller's bug
 * @see ISO/IEC 15434 (envelope; seen on two independent pages), ANSI MH10.8.2 (identifiers; seen, `1P` from memory)
 * @example buildBoxCode({ item: 'CNMG120408-M7', lot: 'L26-004217', quantity: 10, packedOn: '2026-11-20' })
 */
export function buildBoxCode(fields: BoxCodeFields): string {
  const fault = boxCodeFault(fields);
  if (fault !== null) throw new OutsideDomain('fields', 'fit for a box code', JSON.stringify({ fault, fields }));
  const written = boxIdentifiers.flatMap((identifier) => {
    const value = valueFor(identifier, fields);
    return value === null ? [] : [identifier + value];
  });
  return `${messageHeader}06${groupSeparator}${written.join(groupSeparator)}${recordSeparator}${endOfTransmission}`;
}

function valueFor(identifier: BoxIdentifier, fields: BoxCodeFields): string | null {
  const value = fields[boxFieldOf[identifier].field];
  if (value === undefined) return null;
  if (identifier !== '9D' && identifier !== '16D') return String(value);
  const day = /^(\d{4})-(\d{2})-(\d{2})$/.exec(String(value));
  // A day in any other form keeps its quotes and so is refused as no day: "20261120" must not slip through.
  return day === null ? JSON.stringify(value) : day.slice(1).join('');
}
