import { readFileSync } from 'node:fs';
import { documentJsonSchema, kinds } from '@surae/casebook';
import { expect, test } from 'vitest';

test('the published JSON Schema of documents is the one of the checks', () => {
  const file = new URL('../../../shared/schemas/document.schema.json', import.meta.url);
  expect(JSON.parse(readFileSync(file, 'utf8'))).toEqual(documentJsonSchema());
});

test('it holds the body of every kind and version, and each is asked for by kind and version', () => {
  const { allOf, $defs } = documentJsonSchema() as {
    allOf: { if: { properties: { kind: { const: string }; schema: { const: number } } } }[];
    $defs: Record<string, unknown>;
  };
  const expected = kinds.flatMap(({ kind, versions }) => versions.map((_body, place) => `${kind}-${place + 1}`));
  expect(Object.keys($defs)).toEqual(expected);
  expect(allOf.map(({ if: { properties } }) => `${properties.kind.const}-${properties.schema.const}`)).toEqual(
    expected,
  );
});

test('nothing of a questionnaire but its total can be written', () => {
  const { $defs } = documentJsonSchema() as {
    $defs: Record<string, { additionalProperties?: boolean; properties: object }>;
  };
  const body = $defs['questionnaire-total-1'];
  expect(body.additionalProperties).toBe(false);
  expect(Object.keys(body.properties)).toEqual(['questionnaire', 'languageVersion', 'total', 'on', 'side']);
});
