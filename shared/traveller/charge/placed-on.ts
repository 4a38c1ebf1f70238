import { cellName, isOnMap } from '../equipment/charge-map.ts';
import type { Pen } from '../pen.ts';
import { refuse } from '../pen.ts';
import type { PlacingFault } from '../refusal.ts';
import { streamName } from '../stream.ts';
import type { ChargeMember, OpenedOn } from './charge.ts';
import type { OpenCharge } from './commands.ts';

/** The members on the map of the equipment named, every cell held by one lot at most; or as they are where none is named and no cell is given. */
export function placedOn(pen: Pen, command: OpenCharge, members: readonly ChargeMember[]): { readonly map: OpenedOn | null; readonly members: readonly ChargeMember[] } {
  const unsound = (why: PlacingFault, lot = '', cell = '', other = ''): never => refuse({ code: 'placingUnsound', charge: command.charge, why, lot, cell, other });
  if (command.equipmentId === undefined) {
    const placed = members.find(({ cells }) => cells !== undefined);
    if (placed !== undefined) unsound('noMap', placed.lot);
    return { map: null, members };
  }
  const { card } = pen.find(streamName('equipment', command.equipmentId), 'equipment', 'equipment');
  if (card.kind !== command.kind) unsound('otherKind', '', card.name);
  const map: OpenedOn = { equipment: card.id, levels: card.levels, testPositions: card.testPositions };
  const held = new Map<string, string>();
  return {
    map,
    members: members.map((member) => {
      const { lot, places, cells = [] } = member;
      if (places.length > 0) unsound('placesGiven', lot);
      if (cells.length === 0) unsound('noCells', lot);
      for (const cell of cells) {
        const name = cellName(map, cell);
        if (!isOnMap(map, cell)) unsound('outsideMap', lot, name);
        const other = held.get(name);
        if (other !== undefined) unsound('taken', lot, name, other);
        held.set(name, lot);
      }
      return { ...member, places: cells.map((cell) => cellName(map, cell)) };
    }),
  };
}
