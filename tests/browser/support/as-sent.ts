import { expect } from 'vitest';
import { upTo } from './devices/driven.ts';
import type { StoredSamples } from './sensors.ts';

/** How many samples tell the place at which a recording begins. */
const tellingCount = 40;

/** Where in what was sent the stored samples begin: the only place at which the first of them stand, each by its number. */
function placeOf(sent: readonly (readonly number[])[], { numbers, channels }: StoredSamples): number {
  const first = upTo(tellingCount);
  const places = upTo(sent[0].length - numbers[tellingCount]).filter((from) =>
    sent.every((channel, k) => first.every((i) => channel[from + numbers[i]] === channels[k][i])),
  );
  expect(places).toHaveLength(1);
  return places[0];
}

/**
 * What is stored is every sample that was sent from its first to its last but the lost ones, each at its place.
 *
 * @param sent - every sample of each channel
 * @param lost - numbers of those that were sent and did not get through
 * @returns which of the sent ones the first and the last are
 */
export function expectAsSent(
  sent: readonly (readonly number[])[],
  lost: ReadonlySet<number>,
  stored: StoredSamples,
): { readonly from: number; readonly to: number } {
  const { numbers, channels } = stored;
  const from = placeOf(sent, stored);
  const to = from + numbers.at(-1)!;
  const wanted = upTo(to - from + 1, from).filter((n) => !lost.has(n));
  expect(numbers.map((n) => from + n)).toEqual(wanted);
  channels.forEach((channel, k) => expect(channel).toEqual(wanted.map((n) => sent[k][n])));
  return { from, to };
}
