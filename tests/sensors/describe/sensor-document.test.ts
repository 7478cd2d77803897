import { readFileSync } from 'node:fs';
import { sensorJsonSchema } from '@surae/sensors';
import { expect, test } from 'vitest';

test('the published JSON Schema is the one of the validator', () => {
  const file = new URL('../../../shared/schemas/sensor.schema.json', import.meta.url);
  expect(JSON.parse(readFileSync(file, 'utf8'))).toEqual(sensorJsonSchema());
});

test('the schema allows no key that it does not name', () => {
  const objects: unknown[] = [];
  const visit = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    if ('type' in value && value.type === 'object') objects.push(value);
    for (const part of Object.values(value)) visit(part);
  };
  visit(sensorJsonSchema());
  expect(objects.length).toBeGreaterThan(15);
  for (const object of objects) expect(object).toHaveProperty('additionalProperties', false);
});
