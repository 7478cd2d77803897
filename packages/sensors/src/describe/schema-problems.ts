import type { z } from 'zod';
import { codePattern, formPattern } from '../decode/form.ts';
import { hexPattern } from '../decode/hex.ts';
import type { Problem } from '../decode/packet-error.ts';
import { uuidPattern } from '../decode/uuid.ts';

type Issue = z.core.$ZodIssue;
type Path = readonly PropertyKey[];

/** What a schema found wrong with a value, each with its place in the JSON. */
export function schemaProblems(issues: readonly Issue[], value: unknown): Problem[] {
  return issues.flatMap((issue) => problemsOf(issue, [], value));
}

function problemsOf(issue: Issue, before: Path, value: unknown): Problem[] {
  const path = [...before, ...issue.path];
  if (issue.code === 'invalid_union' && issue.errors.length > 0) {
    // the branch that was meant is the one that was left deepest
    const deepest = (issues: readonly Issue[]): number => Math.max(...issues.map((one) => one.path.length));
    const meant = [...issue.errors].sort((a, b) => deepest(b) - deepest(a))[0]!;
    if (deepest(meant) > 0) return meant.flatMap((one) => problemsOf(one, path, value));
    const expected = issue.errors.map((branch) => wanted(branch[0]!)).join(', or ');
    return [{ path: pathText(path), expected, actual: show(at(value, path)) }];
  }
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      path: pathText([...path, key]),
      expected: 'only keys of the schema',
      actual: JSON.stringify(key),
    }));
  }
  return [{ path: pathText(path), expected: wanted(issue), actual: show(at(value, path)) }];
}

function wanted(issue: Issue): string {
  switch (issue.code) {
    case 'invalid_type':
      return `a value of type ${issue.expected}`;
    case 'invalid_value':
      return oneOf(issue.values);
    case 'too_small':
      return `${issue.origin === 'string' || issue.origin === 'array' ? 'a length of ' : ''}${issue.inclusive === false ? 'more than' : 'at least'} ${issue.minimum}`;
    case 'invalid_format':
      return issue.pattern === undefined ? `text of the form ${issue.format}` : textOf(issue.pattern);
    case 'invalid_union':
      return 'options' in issue && issue.options !== undefined ? oneOf(issue.options) : issue.message;
    default:
      return issue.message;
  }
}

/** What the texts of a description look like, by their pattern. */
const plain: readonly (readonly [pattern: RegExp, words: string])[] = [
  [formPattern, 'u, i or f and a number of bits that it can have, such as u8, i24 or f32'],
  [uuidPattern, '128 bits in lower case with hyphens, such as 5b4c9a10-0d3e-4a67-b1c2-6f0e8d7a9b01'],
  [hexPattern, 'bytes of two hexadecimal digits each, such as A5 5A'],
  [codePattern, 'bits in hexadecimal after 0x, such as 0x7FFF'],
];

function textOf(pattern: string): string {
  return plain.find(([known]) => String(known) === pattern)?.[1] ?? `text that matches ${pattern}`;
}

const oneOf = (words: readonly unknown[]): string => `one of ${words.map((word) => JSON.stringify(word)).join(', ')}`;

/** The value at a place; undefined where there is none. */
function at(value: unknown, path: Path): unknown {
  return path.reduce<unknown>((inside, key) => {
    return typeof inside === 'object' && inside !== null ? (inside as Record<PropertyKey, unknown>)[key] : undefined;
  }, value);
}

function show(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) return 'an object';
  const text = JSON.stringify(value);
  return text.length > 40 ? `${text.slice(0, 40)}...` : text;
}

/** A place in JSON, as in `link.characteristics[0].service`. */
function pathText(path: Path): string {
  return path.reduce<string>((text, key) => {
    if (typeof key === 'number') return `${text}[${key}]`;
    return text === '' ? String(key) : `${text}.${String(key)}`;
  }, '');
}
