import * as shared from '@surae/shared';
import { expect, test } from 'vitest';

const families = {
  issue: shared.ISSUE_SENTENCES,
  doubt: shared.DOUBT_SENTENCES,
  withheld: shared.WITHHELD_SENTENCES,
  gate: shared.GATE_SENTENCES,
  input: shared.INPUT_SENTENCES,
  refusal: shared.REFUSAL_SENTENCES,
};

test.each(Object.entries(families))('the sentences of the family %s are whole and carry its name', (name, words) => {
  for (const [code, { id, text }] of Object.entries(words)) {
    expect(id).toBe(`sentence.${name}.${code}`);
    expect(text).toMatch(/^[A-Z].*[^.]\.$/);
  }
});

test('a figure that is withheld names what would bring it', () => {
  const asked = { 'no-heel-lever': /lever/, 'no-body-mass': /body mass/, 'no-external-mass': /external mass/ };
  for (const [code, words] of Object.entries(asked)) {
    expect(shared.WITHHELD_SENTENCES[code as keyof typeof asked].text).toMatch(words);
  }
});
