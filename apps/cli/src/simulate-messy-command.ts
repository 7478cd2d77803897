import { dirname, join } from 'node:path';
import { csvText } from '@surae/exchange';
import { chanceOf, simulateSet } from '@surae/simulation';
import type { Io } from './io.ts';
import { messyStudy } from './messy-study.ts';
import { heightRows, MESSY_WAYS } from './messy-text.ts';
import type { SimulateMessy } from './simulate-arguments.ts';
import { UsageError } from './usage-error.ts';

/** A file of the folder. */
interface MessyFile {
  readonly name: string;
  readonly content: string | Uint8Array;
}

interface MessySet {
  readonly file: MessyFile;
  readonly truth: readonly (string | number)[];
  readonly bodyMassKg: number;
}

/** Raises at the first visit, and how many more at the second one. Ours. */
const FIRST = { from: 9, to: 22 };
const MORE = { from: -1, to: 7 };

/** Two sets of one invented person and leg, eight weeks apart. */
function setsOf(person: string, at: number, args: SimulateMessy): MessySet[] {
  const seed = args.seed * 1000 + at;
  const chance = chanceOf(seed);
  const side = at % 2 === 0 ? 'left' : 'right';
  const way = MESSY_WAYS[at % MESSY_WAYS.length]!;
  const between = ({ from, to }: typeof FIRST): number => Math.round(from + (to - from) * chance.next());
  const first = between(FIRST);
  const counts = [first, first + between(MORE)];
  const moves = simulateSet({ placement: 'heel', level: args.level, seed, count: first, cycleS: 2 }).truth.person;
  return counts.map((count, visit) => {
    const request = { placement: 'heel', level: args.level, seed: seed + 500 * visit, count, person: moves } as const;
    const set = simulateSet(request);
    const name = `traces/${way.folder}/${way.nameOf(person, visit + 1, side)}`;
    return {
      file: { name, content: way.bytesOf(heightRows(set)) },
      truth: [person, visit + 1, side, set.truth.repetitions.length],
      bodyMassKg: moves.bodyMassKg,
    };
  });
}

/** What lies about in such a folder: notes, a copy, a file that was cut off, and one without anything in it. */
function litter(sets: readonly MessySet[]): MessyFile[] {
  const copied = sets[0]!.file.content as Uint8Array;
  return [
    { name: 'traces/room-1/Copy of first.csv', content: copied },
    { name: 'traces/room-1/broken off.csv', content: copied.subarray(0, Math.floor(copied.length / 3) + 2) },
    { name: 'traces/ward/empty.csv', content: '' },
    { name: 'traces/ward/notes.txt', content: 'The cable was changed on the second day.\nP02 came late.\n' },
    { name: 'traces/ward/camera.jpg', content: Uint8Array.of(0xff, 0xd8, 0xff, 0xe0) },
  ];
}

/** A folder as it comes from three assistants, with what is known of the people, what is true, and a study that is declared. */
export function simulateMessy(args: SimulateMessy, io: Io): number {
  const { folder, people, seed, replace } = args;
  const names = Array.from({ length: people }, (_, at) => `P${String(at + 1).padStart(2, '0')}`);
  const sets = names.flatMap((person, at) => setsOf(person, at, args));
  const known = names.map((person, at) => [person, sets[2 * at]!.bodyMassKg.toFixed(1), 'barefoot', 'fatigue']);
  const files: MessyFile[] = [
    ...sets.map(({ file }) => file),
    ...litter(sets),
    { name: 'people.csv', content: csvText(['person', 'body_mass_kg', 'footwear', 'end_reason'], known) },
    { name: 'study.json', content: `${JSON.stringify(messyStudy(seed), null, 2)}\n` },
    {
      name: 'truth.csv',
      content: csvText(
        ['file', 'person', 'visit', 'side', 'repetitions'],
        sets.map(({ file, truth }) => [file.name, ...truth]),
      ),
    },
  ];
  const there = files.map(({ name }) => join(folder, name)).find((path) => io.exists(path));
  if (there !== undefined && !replace) {
    throw new UsageError(`${there} is there already: name another folder, or add --replace`);
  }
  for (const { name, content } of files) {
    const path = join(folder, name);
    io.makeFolder(dirname(path));
    io.writeFile(path, content);
  }
  io.writeOut(
    `${sets.length} recordings of ${people} invented people in ${folder}/traces, saved in ${MESSY_WAYS.length} ways\n`,
  );
  io.writeOut(
    `what is known of them: ${folder}/people.csv; what was declared: ${folder}/study.json; what is true: ${folder}/truth.csv\n`,
  );
  return 0;
}
