import { type AmendmentRules, laidOver } from '@surae/casebook';
import type { StoredDocument } from '@surae/storage';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runs } from '../support/runs.ts';
import { sampleDocument } from '../support/sample-bodies.ts';

const all: AmendmentRules = { isAmendable: (kind) => kind !== 'audit-entry', fits: () => true };

function amend(about: string, change: object): StoredDocument {
  return sampleDocument('amendment', about, { change, why: null } as never);
}

describe('amendments', () => {
  const total = sampleDocument('questionnaire-total', 'p');
  const run = sampleDocument('run', 'p');

  test('are laid over member by member, the later wins, and the old documents stay as they were', () => {
    const given = [total, run, amend(total.id, { total: 46, side: 'right' }), amend(total.id, { total: 48 })];
    const before = JSON.stringify(given);
    const { documents, refused } = laidOver(given, all);
    expect(documents).toEqual([{ ...total, body: { ...(total.body as object), total: 48, side: 'right' } }, run]);
    expect(refused).toEqual([]);
    expect(JSON.stringify(given)).toBe(before);
  });

  test('that would leave no body of its kind are refused, and change nothing', () => {
    const worse = amend(total.id, { total: 'many' });
    const rules = {
      ...all,
      fits: ({ body }: StoredDocument) => typeof (body as { total: unknown }).total === 'number',
    };
    expect(laidOver([total, worse, amend(total.id, { total: 50 })], rules)).toEqual({
      documents: [{ ...total, body: { ...(total.body as object), total: 50 } }],
      refused: [{ id: worse.id, kind: 'amendment', code: 'no-fit-after' }],
    });
  });

  test('of what is not there or may not be changed are refused', () => {
    const audit = sampleDocument('audit-entry', null);
    const first = amend(total.id, { total: 1 });
    const given = [total, audit, first, amend('gone', {}), amend(audit.id, {}), amend(first.id, {})];
    expect(laidOver(given, all).refused.map(({ code }) => code)).toEqual([
      'about-nothing',
      'not-amendable',
      'about-nothing',
    ]);
  });

  test.each(['audit-entry', 'person-erased', 'clock-set-back'])(
    '%s tells what was done and cannot be removed',
    (kind) => {
      const told = sampleDocument(kind, null);
      const { documents, refused } = laidOver([told, sampleDocument('removal', told.id)], all);
      expect([documents, refused.map(({ code }) => code)]).toEqual([[told], ['not-amendable']]);
    },
  );

  test('what is removed does not count, and an entry of the audit trail cannot be removed', () => {
    const audit = sampleDocument('audit-entry', null);
    const given = [
      total,
      run,
      audit,
      sampleDocument('removal', total.id),
      amend(total.id, { total: 5 }),
      sampleDocument('removal', audit.id),
    ];
    const { documents, refused } = laidOver(given, all);
    expect(documents).toEqual([run, audit]);
    expect(refused.map(({ kind, code }) => [kind, code])).toEqual([['removal', 'not-amendable']]);
  });

  test('many of them agree with writing each into a copy by hand', () => {
    const change = fc.dictionary(fc.constantFrom('total', 'on', 'side'), fc.integer(), { minKeys: 1 });
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(2), change)), (changes) => {
        const three = [0, 1, 2].map(() => sampleDocument('questionnaire-total', 'p'));
        const bodies = three.map(({ body }) => ({ ...(body as Record<string, unknown>) }));
        const made = changes.map(([which, one]) => {
          for (const [key, value] of Object.entries(one)) bodies[which][key] = value;
          return amend(three[which].id, one);
        });
        expect(laidOver([...three, ...made], all).documents.map(({ body }) => body)).toEqual(bodies);
      }),
      runs(50, 500),
    );
  });
});
