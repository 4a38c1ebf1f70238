/** A place in a drawing, px. */
export interface Place { readonly x: number; readonly y: number }

/**
 * Where along each line its letter is to stand: as far as can be from the other lines and from the letters placed before, and inside the frame.
 * Lines that lie on one another get their letters side by side.
 * @param lines the points of each line in drawing order; a line without points gets no letter
 * @param frame inner size of the chart, px @param marks places that are to stay in sight
 */
export function letterPlaces(lines: readonly (readonly Place[])[], { width, height }: { readonly width: number; readonly height: number }, marks: readonly Place[] = []): readonly (Place | null)[] {
  const placed: Place[] = [];
  return lines.map((line, own) => {
    const others = lines.filter((_, at) => at !== own);
    const inside = line.filter(({ x, y }, at) => at % 4 === 0 && x > 16 && x < width - 16 && y > 16 && y < height - 16);
    const across = inside.length > 0 ? inside : line.filter(({ x }, at) => at % 4 === 0 && x > 16 && x < width - 16);
    const best = bestBy(across.length === 0 ? line.slice(0, 1) : across, (place) => {
      const toLines = Math.min(45, ...others.map((other) => nearest(place, other)));
      // A letter under another cannot be read at all; so that distance counts for more, up to three letters' width.
      return toLines + 2 * Math.min(75, nearest(place, placed)) + 2 * Math.min(30, nearest(place, marks)) + steepness(line, place);
    });
    if (best !== null) placed.push(best);
    return best;
  });
}

function nearest(place: Place, others: readonly Place[]): number {
  return others.reduce((least, other) => Math.min(least, Math.hypot(other.x - place.x, other.y - place.y)), Number.POSITIVE_INFINITY);
}

/** A letter on the bend of the line says more than one on its flat ends: up to 20 for a slope. */
function steepness(line: readonly Place[], place: Place): number {
  const at = line.indexOf(place);
  const [before, after] = [line[Math.max(at - 3, 0)] ?? place, line[Math.min(at + 3, line.length - 1)] ?? place];
  return after.x === before.x ? 0 : Math.min(20, 20 * Math.abs((after.y - before.y) / (after.x - before.x)));
}

function bestBy(places: readonly Place[], worth: (place: Place) => number): Place | null {
  let [best, most]: [Place | null, number] = [null, Number.NEGATIVE_INFINITY];
  for (const place of places) {
    const worthOf = worth(place);
    if (worthOf > most) [best, most] = [place, worthOf];
  }
  return best;
}
