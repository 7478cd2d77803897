// What an observer may lack: one part of what it knows of the person, taken as it is in people in general.
// The part is wrong then for most people, as it is for a method that takes it for granted; all else stays what it is.
import { levels } from '../kinds.mjs';

/** A move as most people make it. */
const usualShape = { kind: 'minimum-jerk', skew: 0, share: 0.4 };

/** Rise, hold, fall and rest at the bottom, in the middle of what is drawn, in units of the rise [-]. */
const usualParts = [1, 0.2, 1.05, 0.375];

/** Tempo at which the table states the wobble [s]. */
const statedCycleS = 2;

function middle([low, high]) {
  return (low + high) / 2;
}

/** Shares of a cycle of which the moves keep `moves` as they are to each other, and the rest at the bottom is `rest`. */
function sharesOf(moves, rest) {
  const sum = moves.reduce((all, share) => all + share, 0);
  return [...moves.map((share) => (share / sum) * (1 - rest)), rest];
}

/** Amounts of these faults in the middle of their ranges at a level. */
function usualFaults(names) {
  return ({ faults }, rangeOf) => ({
    faults: { ...faults, ...Object.fromEntries(names.map((name) => [name, middle(rangeOf(name))])) },
  });
}

function withShares({ person }, shares) {
  return { person: { ...person, shares } };
}

/** By name: what is taken in place of what is true of the person, or of how long people stand still about the set. */
const parts = {
  /** from nobody knows when to nobody knows when, on average as long as it is */
  stillness: ({ quiet }) => ({
    quiet: Object.fromEntries(Object.entries(quiet).map(([name, range]) => [name, [0, 2 * middle(range)]])),
  }),
  rest: ({ person }) => {
    const rest = usualParts[3] / usualParts.reduce((all, part) => all + part, 0);
    return withShares({ person }, sharesOf(person.shares.slice(0, 3), rest));
  },
  moves: ({ person }) => withShares({ person }, sharesOf(usualParts.slice(0, 3), person.shares[3])),
  shapes: ({ person }) => ({ person: { ...person, upShape: usualShape, downShape: usualShape } }),
  wobble: ({ person, faults }, rangeOf) => {
    const growth = (statedCycleS / person.cycleS) ** middle(rangeOf('wobblePace'));
    return {
      faults: {
        ...faults,
        trunkWobble: growth * middle(rangeOf('trunkWobble')),
        platformWobble: growth * middle(rangeOf('platformWobble')),
        wobbleCornerHz: middle(rangeOf('wobbleCornerHz')),
      },
    };
  },
  tempo: usualFaults(['tempoDrift', 'tempoSpread', 'partSpread']),
  heights: usualFaults(['fatigueLoss', 'heightSpread']),
  events: usualFaults(['restShare', 'pauseShare', 'partialShare', 'incompleteShare']),
};

/** Names of all that an observer may lack. */
export const lackable = Object.keys(parts);

/**
 * A set and the stillness about it as an observer takes them that lacks some parts: the recording stays what it is.
 * `lacking` lists names of parts; `faultTable` is that of the simulation.
 */
export function takenInGeneral({ set, quiet }, lacking, faultTable, level) {
  const rangeOf = (name) => faultTable[name].amounts[levels.indexOf(level)];
  let taken = { person: set.truth.person, faults: set.faults, quiet };
  for (const name of lacking) {
    if (parts[name] === undefined) throw new RangeError(`no such part: ${name}; there are ${lackable.join(', ')}`);
    taken = { ...taken, ...parts[name](taken, rangeOf) };
  }
  const { person, faults } = taken;
  return { set: { ...set, faults, truth: { ...set.truth, person } }, quiet: taken.quiet };
}
