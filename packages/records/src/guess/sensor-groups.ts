import type { NameReading } from './column-name.ts';
import { wordsOf } from './column-name.ts';
import { normSizes } from './column-values.ts';

/** A column of numbers that may be one of three. */
export interface AxisCandidate {
  readonly index: number;
  readonly label: string;
  readonly name: NameReading;
  readonly samples: Float64Array;
}

/** Three columns that are the axes of one sensor, in the order x, y, z. */
export interface Triple {
  readonly indices: readonly [number, number, number];
  /** the names tell the axes; else it is the order of the columns */
  readonly isNamed: boolean;
  /** length of the vector, where it stays near a size that gravity has in some unit [unit of the columns] */
  readonly gravity: number | undefined;
}

/** Sizes of gravity in the units that sensors give: m/s2, g, mg, cm/s2, mm/s2. */
const gravitySizes = [9.80665, 1, 1000, 980.665, 9806.65];

function gravityOf(axes: readonly Float64Array[]): number | undefined {
  const { median, spread } = normSizes(axes);
  return spread < 0.35 && gravitySizes.some((size) => Math.abs(median / size - 1) < 0.08) ? median : undefined;
}

/** The columns that belong together as axes: by their names, else three neighbours whose length is that of gravity. */
export function findTriples(candidates: readonly AxisCandidate[]): Triple[] {
  const stems = new Map<string, Partial<Record<'x' | 'y' | 'z', AxisCandidate>>>();
  for (const candidate of candidates) {
    const { axis } = candidate.name;
    if (axis === null) continue;
    const stem = wordsOf(candidate.label.replace(/[[(].*$/, ''))
      .map((word) => (word === axis ? '' : word.replace(new RegExp(`^([a-z]*)${axis}$`), '$1')))
      .join(' ');
    const known = stems.get(`${candidate.name.quantities.join()}:${stem}`) ?? {};
    known[axis] ??= candidate;
    stems.set(`${candidate.name.quantities.join()}:${stem}`, known);
  }
  const named = [...stems.values()].flatMap(({ x, y, z }): Triple[] =>
    x === undefined || y === undefined || z === undefined
      ? []
      : [
          {
            indices: [x.index, y.index, z.index],
            isNamed: true,
            gravity: gravityOf([x, y, z].map((one) => one.samples)),
          },
        ],
  );
  const taken = new Set(named.flatMap(({ indices }) => [...indices]));
  const found: Triple[] = [...named];
  for (let i = 0; i + 2 < candidates.length; i += 1) {
    const three = candidates.slice(i, i + 3);
    const follow = three.every(
      ({ index, name }, k) => index === three[0]!.index + k && !taken.has(index) && !name.isOther && !name.isTime,
    );
    if (!follow || three.some(({ samples }) => isSteady(samples))) continue;
    const gravity = gravityOf(three.map(({ samples }) => samples));
    if (gravity === undefined) continue;
    const indices = [three[0]!.index, three[1]!.index, three[2]!.index] as const;
    found.push({ indices, isNamed: false, gravity });
    for (const index of indices) taken.add(index);
  }
  return found;
}

function isSteady(samples: Float64Array): boolean {
  const first = samples.find((value) => !Number.isNaN(value));
  return samples.every((value) => value === first || Number.isNaN(value));
}
