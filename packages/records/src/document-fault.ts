import type { z } from 'zod';
import { RecordError } from './errors.ts';

/** The refusal of a document for its first fault, with the path of it. */
export function documentFault(error: z.ZodError, at: { readonly file?: string }): RecordError {
  const issue = error.issues[0]!;
  const details = { ...at, path: pathText(issue.path), expected: wanted(issue), actual: came(issue) };
  return new RecordError('invalid-document', details, { cause: error });
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
      return `at least ${issue.minimum}`;
    case 'invalid_format':
      return issue.pattern === undefined ? `text of the form ${issue.format}` : `text that matches ${issue.pattern}`;
    default:
      return issue.message;
  }
}

function came(issue: z.core.$ZodIssue): string {
  return issue.code === 'unrecognized_keys'
    ? issue.keys.map((key) => JSON.stringify(key)).join(', ')
    : shownValue(issue.input);
}

/** A value from a document, short enough for a message. */
export function shownValue(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) return 'an object';
  const text = JSON.stringify(value);
  return text.length > 40 ? `${text.slice(0, 40)}...` : text;
}

function pathText(path: readonly PropertyKey[]): string {
  return path.reduce<string>((text, key) => {
    if (typeof key === 'number') return `${text}[${key}]`;
    return text === '' ? String(key) : `${text}.${String(key)}`;
  }, '');
}
