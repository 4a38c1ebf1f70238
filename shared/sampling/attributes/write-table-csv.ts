import { AQLS } from './aqls.ts';
import type { OwnTable } from './sampling-tables.ts';
import type { TableCell } from './staged-rows.ts';

/**
 * A master table as `readTableCsv` takes it, so that a plant can start its own copy from the one here. Comma between cells, one row a line.
 * @example writeTableCsv({ samples: 'single', rows: tableLines('single', 'normal') }) // 'code_letter,sample_size,0.010,…'
 */
export function writeTableCsv({ samples, rows }: Pick<OwnTable, 'samples' | 'rows'>): string {
  const most = Math.max(...rows.map(({ sizes }) => sizes.length));
  const sizeHeads = { single: ['sample_size'], double: ['n1', 'n2'], multiple: [`n_each_of_${most}`] }[samples];
  const lines = rows.map(({ letter, sizes, cells }) => [letter, ...sizeHeads.map((_, at) => sizes[at] ?? ''), ...cells.map(writtenCell)]);
  return [['code_letter', ...sizeHeads, ...AQLS.map(writtenAql)], ...lines].map((cells) => `${cells.join(',')}\n`).join('');
}

function writtenCell(cell: TableCell): string {
  if (cell === 'unreachable') return '-';
  return typeof cell === 'string' ? cell : cell.map(({ ac, re }) => `${ac ?? '#'}/${re}`).join(';');
}

/** As the standard prints its column heads. */
function writtenAql(aql: number): string {
  return aql.toFixed(aql < 0.1 ? 3 : aql < 1 ? 2 : aql < 10 ? 1 : 0);
}
