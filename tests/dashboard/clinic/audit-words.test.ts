import { expect, test } from 'vitest';
import { auditLine } from '../../../apps/dashboard/src/clinic/audit-words.ts';

const entry = { id: 'e', at: '2026-03-01T09:00:00+01:00', author: 'RN' };
const names = new Map([['p', 'A 17']]);

test('a line says who did what, with whom and how much', () => {
  const line = auditLine(
    { ...entry, body: { what: 'exported', subject: 'p', counts: { trials: 4, files: 1 } } },
    names,
  );
  expect(line).toEqual({ id: 'e', at: entry.at, who: 'RN', what: 'Exported: A 17 (trials 4, files 1)' });
  expect(auditLine({ ...entry, body: { what: 'clinic-opened', subject: null } }, names).what).toBe('Opened the clinic');
});

test('somebody who is no longer in the book has no name', () => {
  const { what } = auditLine({ ...entry, body: { what: 'removed', subject: '0123456789abcdef' } }, names);
  expect(what).toBe('Erased a person: somebody who is no longer in the book (01234567)');
});
