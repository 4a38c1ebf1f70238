/**
 * The first whole number from `from` on for which a question, once answered yes, stays answered yes; above `most` the answer is most + 1.
 * Steps are doubled until yes, then halved, so the cost grows with the logarithm of the distance, or of what it is off the guess.
 * @param stride how far on the answer is guessed to be, 1 or more
 */
export function firstTrue(isTrue: (at: number) => boolean, from: number, most: number, stride = 1): number {
  let [no, yes, step] = [from - 1, from, stride];
  while (yes <= most && !isTrue(yes)) {
    no = yes;
    yes = Math.min(most + 1, yes + step);
    step *= 2;
  }
  while (yes - no > 1) {
    const middle = Math.floor((no + yes) / 2);
    if (isTrue(middle)) yes = middle;
    else no = middle;
  }
  return yes;
}
