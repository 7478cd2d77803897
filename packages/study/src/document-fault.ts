import type { z } from 'zod';
import { StudyError } from './errors.ts';

function pathText(path: readonly PropertyKey[]): string {
  return path.reduce<string>((text, key) => {
    if (typeof key === 'number') return `${text}[${key}]`;
    return text === '' ? String(key) : `${text}.${String(key)}`;
  }, '');
}

function wanted(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return `a value of type ${issue.expected}`;
    case 'invalid_value':
      return `one of ${issue.values.map((word) => JSON.stringify(word)).join(', ')}`;
    case 'unrecognized_keys':
      return 'only the keys of the schema';
    case 'too_small':
      return `${issue.inclusive === false ? 'above' : 'at least'} ${issue.minimum}`;
    case 'too_big':
      return `${issue.inclusive === false ? 'below' : 'at most'} ${issue.maximum}`;
    case 'invalid_format':
      return issue.pattern === undefined ? `text of the form ${issue.format}` : `text that matches ${issue.pattern}`;
    case 'invalid_union':
      return 'one of the forms of the schema';
    default:
      return issue.message;
  }
}

function came(issue: z.core.$ZodIssue): string {
  if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => JSON.stringify(key)).join(', ');
  if (issue.input === undefined) return 'nothing';
  const text = JSON.stringify(issue.input);
  return text.length > 60 ? `${text.slice(0, 60)}...` : text;
}

/**
 * A value out of a text of JSON that came from outside, checked in every part.
 *
 * @param of - what it should be, in words: `a study file`
 * @throws {@link StudyError} `bad-file` with the path of the first fault; `newer-version`
 */
export function parseDocument<Schema extends z.ZodType>(
  schema: Schema,
  text: string,
  { of, kind, version, file }: { of: string; kind: string; version: number; file?: string | undefined },
): z.infer<Schema> {
  const at = file === undefined ? {} : { file };
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (cause) {
    const actual = cause instanceof Error ? cause.message : String(cause);
    throw new StudyError('bad-file', { ...at, expected: `${of} as JSON`, actual }, { cause });
  }
  const head = (typeof value === 'object' && value !== null ? value : {}) as Readonly<Record<string, unknown>>;
  if (head['kind'] !== kind) {
    const actual = head['kind'] === undefined ? 'none' : JSON.stringify(head['kind']);
    throw new StudyError('bad-file', { ...at, path: 'kind', expected: JSON.stringify(kind), actual });
  }
  const came_ = head['version'];
  if (typeof came_ === 'number' && Number.isInteger(came_) && came_ > version) {
    const expected = `a version up to ${version}`;
    throw new StudyError('newer-version', { ...at, path: 'version', expected, actual: String(came_) });
  }
  const result = schema.safeParse(value, { reportInput: true });
  if (result.success) return result.data;
  const issue = result.error.issues[0]!;
  const details = { ...at, path: pathText(issue.path), expected: wanted(issue), actual: came(issue) };
  throw new StudyError('bad-file', details, { cause: result.error });
}
