import type { Place } from '../../../shared/traveller/index.ts';
import type { Carrier } from '../../parts/gh-tray-map.ts';

/** Places in one row of a tray and barrels in one row on the pallet, as they are counted when nothing else is said (common practice, no source). */
const placesInRow = 10;
const barrelsInRow = 6;

/** The trays that pieces are taken from, with the order in the draw at each place. @param first place in the draw of the first of them */
export function trayCarriers(places: readonly Place[], trayCapacity: number, first = 1): Carrier[] {
  const byTray = new Map<number, { row: number; column: number; text: string }[]>();
  places.forEach((place, at) => {
    if (place.at !== 'tray') return;
    const take = byTray.get(place.tray) ?? [];
    take.push({ ...seat(place.position, placesInRow), text: String(at + first) });
    byTray.set(place.tray, take);
  });
  const columns = Math.min(placesInRow, trayCapacity);
  return [...byTray].sort(([a], [b]) => a - b).map(([tray, take]) => ({ name: String(tray), rows: Math.ceil(trayCapacity / placesInRow), columns, take }));
}

/** The batch's barrels, those to be sampled marked with their number. */
export function barrelCarrier(places: readonly Place[], batch: string, barrels: number): Carrier {
  const drawn = [...new Set(places.flatMap((place) => (place.at === 'barrel' ? [place.barrel] : [])))];
  return { name: batch, rows: Math.ceil(barrels / barrelsInRow), columns: Math.min(barrelsInRow, barrels), take: drawn.map((barrel) => ({ ...seat(barrel, barrelsInRow), text: String(barrel) })) };
}

function seat(nth: number, inRow: number): { readonly row: number; readonly column: number } {
  return { row: Math.ceil(nth / inRow), column: ((nth - 1) % inRow) + 1 };
}
