import { guarded, unguarded } from '@surae/exchange';
import fc from 'fast-check';
import { expect, test } from 'vitest';

test.each(['=', '+', '-', '@', '\t', '\r', '\n', '\uFF1D'])('a text that begins with %j is guarded', (first) => {
  expect(guarded(`${first}1`)).toBe(`'${first}1`);
});

test('any other text stays as it is', () => {
  for (const text of ['', 'a=1', ' =1', '1-2', 'Zoë']) expect(guarded(text)).toBe(text);
});

test('the guard can be taken off, whatever the text began with', () => {
  fc.assert(fc.property(fc.string(), (text) => unguarded(guarded(text)) === text));
  fc.assert(fc.property(fc.stringMatching(/^['=+@-]{0,4}$/), (text) => unguarded(guarded(text)) === text));
});
