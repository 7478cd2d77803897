import type { Light } from '@surae/analysis';
import { LIGHT_SENTENCES } from '@surae/shared';
import { expect, test } from 'vitest';
import { lightInWords } from '../../../apps/dashboard/src/live/light-words.ts';

const light = (told: Partial<Light>): Light => ({
  name: 'zero',
  state: 'failing',
  reason: 'no-zero',
  figures: {},
  ...told,
});

test('a fix that a press carries out is a button, any other is said', () => {
  expect(lightInWords(light({}))).toEqual({
    id: 'zero',
    name: 'Zero',
    answer: 'no',
    sentence: 'This sensor was not zeroed today.',
    fix: { code: 'no-zero', text: 'Take the load off and set the zero' },
  });
  const said = lightInWords(light({ name: 'right-way-up', reason: 'upside-down', figures: { degrees: 179.6 } }));
  expect(said).toMatchObject({
    sentence: 'The sensor is upside down: gravity points 180° away from where it should. Turn the sensor over.',
    fix: null,
  });
});

test('what is lit has no fix; what cannot be told says so', () => {
  expect(lightInWords(light({ name: 'side', state: 'lit', reason: 'side-agrees' }))).toMatchObject({
    answer: 'yes',
    fix: null,
  });
  expect(lightInWords(light({ name: 'mass', state: 'cannot-tell', reason: 'nobody-stands' })).answer).toBe(
    'cannot-tell',
  );
});

test('every sentence finds its figures', () => {
  const names = ['rate', 'seconds', 'degrees', 'size', 'force', 'level', 'u', 'minutes', 'shown', 'told', 'days'];
  const figures = Object.fromEntries(names.map((name) => [name, 1.26]));
  for (const reason of Object.keys(LIGHT_SENTENCES) as Light['reason'][]) {
    expect(lightInWords(light({ reason, figures })).sentence).not.toMatch(/[{}]/);
  }
});
