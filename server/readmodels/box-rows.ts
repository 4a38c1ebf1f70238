import type { Database } from 'better-sqlite3';
import type { Slip } from '../../shared/traveller/index.ts';
import { streamParts } from '../../shared/traveller/index.ts';
import { prepared } from '../journal/sqlite/prepared.ts';

/** Takes in what happens to boxes. */
export function takeBoxes(db: Database, { stream, body }: Slip): void {
  const stand = (box: string, standing: string, shipment: string | null = null): void => {
    prepared<[string, string | null, string]>(db, 'UPDATE box SET standing = ?, shipment = coalesce(?, shipment) WHERE serial = ?').run(standing, shipment, box);
  };
  switch (body.type) {
    case 'boxPacked':
      prepared<[string, string, number]>(db, `INSERT INTO box (serial, lot, pieces, standing) VALUES (?, ?, ?, 'packed')`).run(body.box, streamParts(stream)?.id ?? '', body.pieces);
      return;
    case 'labelPrinted': return stand(body.box, 'labelled');
    case 'labelRead': return stand(body.box, 'readBack');
    case 'boxVoided': return stand(body.box, 'voided');
    case 'boxShipped': return stand(body.box, 'shipped', body.shipment);
    default:
  }
}
