import * as shared from '@surae/shared';
import { expect, test } from 'vitest';

const families = {
  criterion: shared.CRITERION_SENTENCES,
  'criterion-name': shared.CRITERION_NAMES,
  'not-observed': shared.NOT_OBSERVED_SENTENCES,
  verdict: shared.VERDICT_SENTENCES,
  'end-rule': shared.END_RULE_SENTENCES,
  'fault-kind': shared.FAULT_KIND_SENTENCES,
  'end-reason': shared.END_REASON_SENTENCES,
  'end-class': shared.END_CLASS_SENTENCES,
  effort: shared.EFFORT_SENTENCES,
  reference: shared.REFERENCE_SENTENCES,
  scope: shared.SCOPE_SENTENCES,
};

test.each(Object.entries(families))('the family %s carries its own name in every id', (name, words) => {
  const pairs = Object.entries(words).map(([code, { id }]) => [code, id]);
  expect(pairs).toEqual(pairs.map(([code]) => [code, `sentence.${name}.${code}`]));
});

test('a name is a part of a sentence, a reason may begin one, everything else is a whole sentence', () => {
  const textsOf = (name: keyof typeof families) => Object.values(families[name]).map(({ text }) => text);
  for (const name of ['criterion-name', 'fault-kind'] as const) {
    expect(textsOf(name).filter((text) => !/^[a-z][a-z ]*$/.test(text))).toEqual([]);
  }
  expect(textsOf('criterion').filter((text) => !/^[A-Z].*[^.]$/.test(text))).toEqual([]);
  for (const name of ['not-observed', 'end-rule', 'end-reason', 'end-class', 'effort', 'reference'] as const) {
    expect(textsOf(name).filter((text) => !/^[A-Z].*\.$/.test(text))).toEqual([]);
  }
});

test('an end by pain is never called capacity, and an unknown end is not interpreted', () => {
  expect(shared.END_CLASS_SENTENCES.tolerance.text).toMatch(/pain.*not what the calf could do/);
  for (const id of ['unknown', 'incomplete'] as const) {
    expect(shared.END_CLASS_SENTENCES[id].text).toContain('not interpreted');
  }
});
