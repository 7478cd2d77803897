import { DESIGN_QUESTIONS, type DesignInput } from '@surae/study';
import { DESIGN_IDS } from './design-arguments.ts';
import { labelled } from './text-lines.ts';

const NAME_WIDTH = 24;
const WIDTH = 79;

/** An option with what it is, and what it is unless told. */
function inputLines({ key, description, usual, isUncertain }: DesignInput): string[] {
  const name = `  --${key} N${isUncertain ? '[,N,N]' : ''}`;
  const text = `${description}${usual === null ? '' : `  (${usual})`}`;
  const lines = labelled('', text, NAME_WIDTH, WIDTH);
  return name.length < NAME_WIDTH
    ? [name.padEnd(NAME_WIDTH) + lines[0]!.trimStart(), ...lines.slice(1)]
    : [name, ...lines];
}

/** A question with what has to be told, in each way. */
function questionLines(id: (typeof DESIGN_IDS)[number]): string[] {
  const ways = DESIGN_QUESTIONS.filter((one) => one.id === id);
  const lines = (from: (typeof ways)[number]): string[] =>
    from.inputs.filter(({ usual }) => usual === null).map(({ key }) => `--${key}`);
  return labelled(`  ${id}`, ways.map((way) => lines(way).join(' ')).join(', or '), NAME_WIDTH, WIDTH);
}

/** What surae design says about itself: questions and inputs as the list of questions has them. */
export function designHelp(): string {
  const inputs = new Map<string, DesignInput>();
  for (const input of DESIGN_QUESTIONS.flatMap((one) => one.inputs)) {
    if (!inputs.has(input.key)) inputs.set(input.key, input);
  }
  return `surae design QUESTION  [options]

How many people a study needs, before it is done. What goes in is never
certain: an input that is not may be told as lowest,expected,highest, and the
answer says how far it moves. Exact by the noncentral t, chi-square or F where
that can be; a published formula stands beside it. Nothing is read.

Questions, and what each has to be told
${DESIGN_IDS.flatMap(questionLines).join('\n')}

Inputs
${[...inputs.values()].flatMap(inputLines).join('\n')}
  --sd-people N, --sd-change-people N, --sem-people N
                        how many people it was found in: lowest and highest are
                        then the ends of its 95 % interval

What comes out
  (nothing)             a few lines to read
  --json                one JSON object; null is more than 100000, or not given
  --out DIR             design.csv, curve.csv, dictionary.csv, design.svg and
                        reproduce.json: the command that makes them again
  --replace             write over files of these names

Exit code: 0 done, 2 the command line cannot be followed, or the inputs cannot
be; it says which and why.

Examples
  surae design groups --difference 3 --sd 4,5,7 --drop-out 0.1
  surae design paired --difference 3 --sem 2.25 --sem-people 32 --out plan
  surae design icc --width 0.2 --icc 0.7,0.85,0.9 --repeats 2
  surae design change --change 4 --sem 2.25
`;
}
