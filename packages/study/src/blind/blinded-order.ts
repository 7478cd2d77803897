import { createRandom, type Random } from '@surae/analysis';
import { canonicalHash } from '../canonical-hash.ts';
import type { DeclaredStudy } from '../declared/parse-study.ts';
import type { StudyFile } from '../declared/study-document.ts';
import { StudyError } from '../errors.ts';

/** A recording that is counted again, by the name that the manifest has for it. */
export interface BlindTrial {
  readonly trial: string;
  readonly sha256: string;
}

/** One showing of a recording under a name that tells nothing. */
export interface BlindItem extends BlindTrial {
  /** `item-001`: its place in the order of this rater */
  readonly item: string;
  readonly showing: 1 | 2;
}

/** What is behind the names of one rater. It is kept from the rater until the verdicts are locked. */
export interface BlindKey {
  readonly study: string;
  readonly rater: string;
  readonly items: readonly BlindItem[];
}

function shuffled<Item>(items: readonly Item[], random: Random): Item[] {
  const order = [...items];
  // Fisher & Yates, as Durstenfeld (1964), Commun ACM 7:420, has it (from memory, not checked against the paper)
  for (let at = order.length - 1; at > 0; at -= 1) {
    const other = Math.floor(random() * (at + 1));
    [order[at], order[other]] = [order[other]!, order[at]!];
  }
  return order;
}

/** Places in an order where the second showing of the one at `at` may stand. */
function placesFor(at: number, length: number, leastBetween: number): number[] {
  return Array.from({ length: length + 1 }, (_, place) => place).filter((place) => {
    const between = place > at ? place - at - 1 : at - place;
    return between >= leastBetween;
  });
}

/** What the raters of a study are shown: refused where the study declared none, or not this one. */
export function blindingOf({ study }: DeclaredStudy, rater: string): NonNullable<StudyFile['blinding']> {
  const { blinding } = study;
  if (blinding === null) {
    throw new StudyError('out-of-range', { path: 'blinding', expected: 'seed and raters', actual: 'none declared' });
  }
  if (!blinding.raters.includes(rater)) {
    const expected = `one of ${blinding.raters.join(', ')}`;
    throw new StudyError('out-of-range', { path: 'blinding.raters', expected, actual: JSON.stringify(rater) });
  }
  return blinding;
}

/**
 * The order in which a rater is shown the recordings, some of them twice, under names that tell nothing.
 *
 * It hangs on the study, its seed, the rater and the recordings, not on the order in which they come: whoever has the study file and
 * the manifest can find it again, so both are kept from raters. Shuffled by xoshiro128**, seeded by 32 bits of a SHA-256.
 *
 * @throws {@link StudyError} `out-of-range` for a rater that was not declared, a trial that comes twice, and where so many recordings
 *   do not lie between two showings of one
 */
export function blindedOrder(declared: DeclaredStudy, rater: string, trials: readonly BlindTrial[]): BlindKey {
  const { seed, repeatedShare, leastBetween } = blindingOf(declared, rater);
  const sorted = [...trials].sort((a, b) => (a.trial < b.trial ? -1 : 1));
  const twice = sorted.find(({ trial }, at) => trial === sorted[at - 1]?.trial);
  if (twice !== undefined) {
    throw new StudyError('out-of-range', {
      path: 'trials',
      expected: 'every one once',
      actual: JSON.stringify(twice.trial),
    });
  }
  const seedHash = canonicalHash({ order: 'surae-study-order', study: declared.hash, seed, rater });
  const random = createRandom(Number.parseInt(seedHash.slice(0, 8), 16));
  const order: Omit<BlindItem, 'item'>[] = shuffled(sorted, random).map(({ trial, sha256 }) => ({
    trial,
    sha256,
    showing: 1,
  }));
  const repeated = shuffled(sorted, random).slice(0, Math.round(repeatedShare * sorted.length));
  for (const { trial } of repeated) {
    const at = order.findIndex((one) => one.trial === trial);
    const places = placesFor(at, order.length, leastBetween);
    const place = places[Math.floor(random() * places.length)];
    if (place === undefined) {
      const expected = `${leastBetween} recordings between two showings of one`;
      const actual = `${sorted.length} recordings in all`;
      throw new StudyError('out-of-range', { path: 'blinding.leastBetween', expected, actual });
    }
    order.splice(place, 0, { ...order[at]! });
    const later = Math.max(place, place <= at ? at + 1 : at);
    order[later] = { ...order[later]!, showing: 2 };
  }
  const digits = Math.max(3, String(order.length).length);
  const items = order.map((one, at) => ({ item: `item-${String(at + 1).padStart(digits, '0')}`, ...one }));
  return { study: declared.hash, rater, items };
}

/** The hash of a key: verdicts begin from it, so that no other key can be opened afterwards. */
export function keyHash(key: BlindKey): string {
  return canonicalHash(key);
}
