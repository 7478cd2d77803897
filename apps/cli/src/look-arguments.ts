import { parseArgs } from 'node:util';
import { parsed } from './parsed-options.ts';
import { UsageError } from './usage-error.ts';

/** A manifest that is to be made of all files. */
export interface LookedList {
  readonly out: string;
  /** patterns of names, as they were written */
  readonly names: readonly string[];
  /** a table of what is known of people */
  readonly facts: string | undefined;
}

export interface LookArguments {
  readonly command: 'look';
  readonly files: readonly string[];
  /** what was said about the file, by the id of a question */
  readonly answers: Readonly<Record<string, string>>;
  /** where the recipe goes; undefined: none is made */
  readonly recipeOut: string | undefined;
  readonly name: string | undefined;
  readonly list: LookedList | undefined;
  readonly json: boolean;
  readonly replace: boolean;
}

/** What `surae look` is asked for, or that its help is wanted. */
export function readLook(args: readonly string[]): LookArguments | { command: 'help'; about: 'look' } {
  const { values, positionals } = parsed(() =>
    parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        set: { type: 'string', multiple: true },
        'recipe-out': { type: 'string' },
        name: { type: 'string' },
        'manifest-out': { type: 'string' },
        names: { type: 'string', multiple: true },
        facts: { type: 'string' },
        json: { type: 'boolean' },
        replace: { type: 'boolean' },
        help: { type: 'boolean', short: 'h' },
      },
    }),
  );
  if (values.help === true) return { command: 'help', about: 'look' };
  if (positionals.length === 0) throw new UsageError('name at least one FILE, FOLDER or ZIP');
  const recipeOut = values['recipe-out'];
  if (recipeOut === '') throw new UsageError('--recipe-out needs the name of a file');
  if (recipeOut !== undefined && positionals.length > 1) {
    throw new UsageError(
      `--recipe-out makes the recipe of one FILE: "${positionals[1]}" came after "${positionals[0]}"`,
    );
  }
  if (recipeOut === undefined && values.name !== undefined) {
    throw new UsageError('--name says something only with --recipe-out');
  }
  const list = listOf(values);
  if (list !== undefined && recipeOut !== undefined) {
    throw new UsageError('--manifest-out makes recipes of its own: leave --recipe-out out');
  }
  if (recipeOut === undefined && list === undefined && values.replace === true) {
    throw new UsageError('--replace says something only with --recipe-out or --manifest-out');
  }
  if (values.name === '') throw new UsageError('--name needs a name');
  return {
    command: 'look',
    files: positionals,
    answers: answersOf(values.set ?? []),
    recipeOut,
    name: values.name,
    list,
    json: values.json === true,
    replace: values.replace === true,
  };
}

interface ListOptions {
  readonly 'manifest-out'?: string;
  readonly names?: readonly string[];
  readonly facts?: string;
}

function listOf({ 'manifest-out': out, names = [], facts }: ListOptions): LookedList | undefined {
  if (out === undefined) {
    const lone = names.length > 0 ? 'names' : facts === undefined ? undefined : 'facts';
    if (lone !== undefined) throw new UsageError(`--${lone} says something only with --manifest-out`);
    return undefined;
  }
  if (out === '') throw new UsageError('--manifest-out needs the name of a file');
  return { out, names, facts };
}

/** Answers written as `topic=answer` or `topic:column=answer`; a column may hold the sign =, an answer never does. */
export function answersOf(texts: readonly string[]): Record<string, string> {
  const answers: Record<string, string> = {};
  for (const text of texts) {
    // the one answer that is the sign = itself does not exist, so that the last one parts
    const at = text.lastIndexOf('=');
    if (at < 1 || at === text.length - 1) {
      throw new UsageError(
        `--set ${text}: expected TOPIC=ANSWER or TOPIC:COLUMN=ANSWER, such as --set "unit:Force=kgf"`,
      );
    }
    const id = text.slice(0, at).trim();
    if (Object.hasOwn(answers, id)) throw new UsageError(`--set ${id} came twice`);
    answers[id] = text.slice(at + 1);
  }
  return answers;
}
