import { UsageError } from './usage-error.ts';

/** The parser of Node, its errors turned into ours. */
export function parsed<Result>(parse: () => Result): Result {
  try {
    return parse();
  } catch (error) {
    const sentence = error instanceof Error ? error.message : String(error);
    throw new UsageError(sentence.split('. ')[0]!.replace(/\.$/, ''));
  }
}

/** The refusal of a word that an option does not know. */
export function unknownWord(option: string, came: string, allowed: readonly string[]): UsageError {
  return new UsageError(`${option} ${came}: expected ${allowed.join(', ')}`);
}
