/**
 * Says who gets what is left of a pot that is no whole number of the scale's steps: the largest share whose
 * firm demands leave room for it; undefined where none has, so that it stays in the pot. `largestFirst` are
 * the shares in that order.
 */
export function whoGetsTheRemainder<Share>(
  largestFirst: readonly Share[],
  hasRoom: (share: Share) => boolean,
): Share | undefined {
  return largestFirst.find(hasRoom);
}
