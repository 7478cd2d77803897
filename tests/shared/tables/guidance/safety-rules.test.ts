import { GUIDANCE_RULES, PLAN_OPEN_LINES, SAFETY_LIST } from '@surae/shared';
import { expect, test } from 'vitest';

const blocks = (what: string) =>
  GUIDANCE_RULES.filter(({ proposes }) => proposes.blocks?.includes(what as never)).map(
    ({ proposes }) => proposes.code,
  );

test('every line that keeps from a test keeps from loading, but for those that leave a plan open', () => {
  const open = PLAN_OPEN_LINES.map(({ line }) => line);
  const locking = SAFETY_LIST.filter(({ effect }) => effect === 'do-not-test').map(({ id }) => id);
  expect([...new Set(blocks('loading'))].sort()).toEqual(locking.filter((id) => !open.includes(id)).sort());
  // drugs, rupture, clot and infection are among them, whatever the list becomes
  expect(blocks('loading')).toEqual(
    expect.arrayContaining(['fluoroquinolone', 'steroid', 'rupture', 'clot', 'infection'].map((id) => `safety.${id}`)),
  );
});

test('a line of the heart or of an implant keeps from hard holds and from nothing else', () => {
  expect(blocks('hard-hold')).toEqual(['safety.heart', 'safety.implant']);
});

test('a line that no reason opens has a rule that no reason opens', () => {
  for (const { id, effect, override } of SAFETY_LIST) {
    const rule = GUIDANCE_RULES.find(({ code }) => code === `lock-${id.slice('safety.'.length)}`);
    if (effect !== 'do-not-test' || rule === undefined) continue;
    expect(rule.when, id).toEqual(
      override === 'with-reason' ? { fact: id, is: 'ticked' } : { not: { fact: id, is: 'clear' } },
    );
  }
});
