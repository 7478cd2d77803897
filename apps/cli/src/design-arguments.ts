import { parseArgs } from 'node:util';
import { DESIGN_WORDS } from '@surae/shared';
import {
  DESIGN_QUESTIONS,
  type DesignId,
  type DesignInput,
  type DesignRequest,
  type DesignTold,
  type InputKey,
  questionFor,
  readDesign,
} from '@surae/study';
import { parsed, unknownWord } from './parsed-options.ts';
import { UsageError } from './usage-error.ts';

export interface DesignArguments {
  readonly request: DesignRequest;
  readonly out: string | undefined;
  readonly json: boolean;
  readonly replace: boolean;
}

/** The names of the questions, each once. */
export const DESIGN_IDS: readonly DesignId[] = [...new Set(DESIGN_QUESTIONS.map(({ id }) => id))];

const INPUTS: ReadonlyMap<InputKey, DesignInput> = new Map(
  DESIGN_QUESTIONS.flatMap(({ inputs }) => inputs.map((input) => [input.key, input] as const)),
);

function told(key: string, text: string, people: string | undefined): DesignTold {
  const numbers = text.split(',').map((one) => (one.trim() === '' ? Number.NaN : Number(one)));
  if (!numbers.every(Number.isFinite)) {
    throw new UsageError(`--${key} ${text}: expected a number, or lowest,expected,highest, such as 4,5,7`);
  }
  return { numbers, people: people === undefined ? null : Number(people) };
}

/**
 * What the command line asks of a study that is not yet done; undefined when it asks for help.
 *
 * @throws {@link UsageError} with one sentence when it asks for nothing that can be answered
 */
export function readDesignArguments(args: readonly string[]): DesignArguments | undefined {
  const text = { type: 'string' } as const;
  const flag = { type: 'boolean' } as const;
  const keys = [...INPUTS.keys()];
  const spreads = keys.filter((key) => INPUTS.get(key)!.hasPeople).map((key) => `${key}-people`);
  const own = { out: text, json: flag, replace: flag, help: { type: 'boolean', short: 'h' } } as const;
  const asked = Object.fromEntries([...keys, ...spreads].map((key) => [key, text]));
  const { values, positionals } = parsed(() =>
    parseArgs({ args: [...args], allowPositionals: true, options: { ...asked, ...own } }),
  );
  if (values.help === true) return undefined;
  const [id, ...more] = positionals;
  if (id === undefined) throw new UsageError(`name what the study wants to know: ${DESIGN_IDS.join(', ')}`);
  if (more.length > 0) throw new UsageError(`name one question: "${more[0]}" came after "${id}"`);
  const named = DESIGN_IDS.find((one) => one === id);
  if (named === undefined) throw unknownWord('surae design', id, DESIGN_IDS);
  const texts = values as Readonly<Record<string, string | boolean | undefined>>;
  const given = keys.flatMap((key): [InputKey, DesignTold][] => {
    const [value, people] = [texts[key], texts[`${key}-people`]];
    if (typeof value === 'string') return [[key, told(key, value, typeof people === 'string' ? people : undefined)]];
    if (people !== undefined) throw new UsageError(`--${key}-people says something only with --${key}`);
    return [];
  });
  const question = questionFor(
    named,
    given.map(([key]) => key),
  );
  const idle = given.find(([key]) => !question.inputs.some((input) => input.key === key));
  if (idle !== undefined) throw new UsageError(`--${idle[0]} says nothing here: ${question.title.toLowerCase()}`);
  const reading = readDesign(question, new Map(given));
  if (!reading.ok) {
    const [{ input, code }] = reading.faults as [(typeof reading.faults)[number]];
    throw new UsageError(`--${input}: ${DESIGN_WORDS[`fault-${code}`].text.replace(/\.$/, '')}`);
  }
  const { out, json, replace } = values as { out?: string; json?: boolean; replace?: boolean };
  return { request: reading.request, out, json: json === true, replace: replace === true };
}
