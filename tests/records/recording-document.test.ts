import { readFileSync } from 'node:fs';
import { recordingJsonSchema } from '@surae/records';
import { expect, test } from 'vitest';

test('the published JSON Schema is the one of the validator', () => {
  const file = new URL('../../shared/schemas/recording.schema.json', import.meta.url);
  expect(JSON.parse(readFileSync(file, 'utf8'))).toEqual(recordingJsonSchema());
});

test('the schema allows no key that it does not name', () => {
  const objects: unknown[] = [];
  const visit = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    if ('type' in value && value.type === 'object') objects.push(value);
    for (const part of Object.values(value)) visit(part);
  };
  visit(recordingJsonSchema());
  expect(objects.length).toBeGreaterThan(5);
  for (const object of objects) expect(object).toHaveProperty('additionalProperties', false);
});
