/** What is sent at each beat: nothing, one packet, or several at once. */
export type Beats = readonly (readonly Uint8Array[])[];

function change(beats: Beats, from: number, changed: readonly (readonly Uint8Array[])[]): Beats {
  if (from < 0 || from + changed.length > beats.length) throw new RangeError(`There are no beats ${from} and on.`);
  return [...beats.slice(0, from), ...changed, ...beats.slice(from + changed.length)];
}

/** One packet at each beat. */
export function inBeats(packets: readonly Uint8Array[]): Beats {
  return packets.map((packet) => [packet]);
}

/** So many packets get lost on the air. */
export function without(beats: Beats, from: number, count: number): Beats {
  return change(
    beats,
    from,
    Array.from({ length: count }, () => []),
  );
}

/** A packet comes twice. */
export function twice(beats: Beats, at: number): Beats {
  return change(beats, at, [[...beats[at], ...beats[at]]]);
}

/** A packet is overtaken by the next. */
export function swapped(beats: Beats, at: number): Beats {
  return change(beats, at, [beats[at + 1], beats[at]]);
}

/** So many packets are held back and come at once, with the last of them. */
export function held(beats: Beats, from: number, count: number): Beats {
  const all = beats.slice(from, from + count).flat();
  return change(beats, from, [...Array.from({ length: count - 1 }, () => []), all]);
}

/** A packet loses its end. */
export function cutShort(beats: Beats, at: number, bytes: number): Beats {
  return change(beats, at, [beats[at].map((packet) => packet.slice(0, bytes))]);
}
