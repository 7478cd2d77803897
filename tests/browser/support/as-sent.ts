import { expect } from 'vitest';
import { upTo } from './devices/driven.ts';
import type { StoredSamples } from './sensors.ts';

/** How many samples tell the place at which a recording begins. */
const tellingCount = 40;

/** Numbers of what was sent from one place on, over the length of the recording, without what was lost. */
function sentFrom(from: number, { numbers }: StoredSamples, lost: ReadonlySet<number>): number[] {
  return upTo(numbers.at(-1)! + 1, from).filter((n) => !lost.has(n));
}

/**
 * Where in what was sent the stored samples begin: the only place at which the first of them stand, each by its number. Where what
 * was sent repeats itself, the place is the one that lost the same.
 */
function placeOf(sent: readonly (readonly number[])[], lost: ReadonlySet<number>, stored: StoredSamples): number {
  const { numbers, channels } = stored;
  const first = upTo(tellingCount);
  const alike = upTo(sent[0].length - numbers[tellingCount]).filter((from) =>
    sent.every((channel, k) => first.every((i) => channel[from + numbers[i]] === channels[k][i])),
  );
  const losesTheSame = (from: number): boolean => {
    const wanted = sentFrom(from, stored, lost);
    return wanted.length === numbers.length && wanted.every((n, i) => n === from + numbers[i]);
  };
  const places = alike.length > 1 ? alike.filter(losesTheSame) : alike;
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
  const from = placeOf(sent, lost, stored);
  const to = from + numbers.at(-1)!;
  const wanted = sentFrom(from, stored, lost);
  expect(numbers.map((n) => from + n)).toEqual(wanted);
  channels.forEach((channel, k) => expect(channel).toEqual(wanted.map((n) => sent[k][n])));
  return { from, to };
}
