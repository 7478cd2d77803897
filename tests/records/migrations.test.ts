import { describe, expect, test } from 'vitest';
import {
  latestVersion,
  type Migration,
  migrateDocument,
  recordingMigrations,
  type VersionedDocument,
  validateMigrations,
} from '../../packages/records/src/migrations.ts';

const rename: Migration = {
  id: 1,
  name: 'rate becomes rateHz',
  up: ({ rate, ...rest }) => ({ ...rest, rateHz: rate }),
};
const addNotes: Migration = { id: 2, name: 'notes are a list', up: (document) => ({ ...document, notes: [] }) };

describe('a list of migrations', () => {
  test('is returned when its numbers rise by one from 1', () => {
    const list = [rename, addNotes];
    expect(validateMigrations(list)).toBe(list);
    expect(validateMigrations([])).toEqual([]);
    expect(validateMigrations(recordingMigrations)).toBe(recordingMigrations);
  });

  test.each([
    ['starts later', [addNotes], 'migration "notes are a list": expected number 1, got 2'],
    ['repeats a number', [rename, rename], 'migration "rate becomes rateHz": expected number 2, got 1'],
    ['leaves one out', [rename, { ...addNotes, id: 3 }], 'expected number 2, got 3'],
    ['is out of order', [addNotes, rename], 'expected number 1, got 2'],
  ])('that %s is refused', (_, list, message) => {
    expect(() => validateMigrations(list)).toThrow(RangeError);
    expect(() => validateMigrations(list)).toThrow(message);
  });

  test('leads to one version more than it has steps', () => {
    expect(latestVersion([rename, addNotes])).toBe(3);
  });
});

describe('migrating a document', () => {
  const steps = [rename, addNotes];

  test('runs the steps from its version on, in order', () => {
    expect(migrateDocument({ version: 1, rate: 100 }, steps)).toEqual({
      type: 'success',
      value: { version: 3, rateHz: 100, notes: [] },
    });
    expect(migrateDocument({ version: 2, rateHz: 100 }, steps)).toEqual({
      type: 'success',
      value: { version: 3, rateHz: 100, notes: [] },
    });
  });

  test('returns a document of the latest version as it is', () => {
    const document: VersionedDocument = { version: 3, rateHz: 100, notes: ['a'] };
    expect(migrateDocument(document, steps)).toEqual({ type: 'success', value: document });
  });

  test('does not change the document it was given', () => {
    const document = Object.freeze({ version: 1, rate: 100 });
    migrateDocument(document, steps);
    expect(document).toEqual({ version: 1, rate: 100 });
  });

  test('refuses a newer version, saying which', () => {
    expect(migrateDocument({ version: 4 }, steps)).toEqual({ type: 'error', reason: 'newer-version', version: 4 });
  });

  test.each([[{}], [{ version: '1' }], [{ version: 0 }], [{ version: 1.5 }], [{ version: Number.NaN }]])(
    'refuses %o: no version',
    (document) => {
      expect(migrateDocument(document, steps)).toEqual({ type: 'error', reason: 'no-version' });
    },
  );

  test('says which step failed, and why', () => {
    const cause = new Error('no rate');
    const failing: Migration = {
      id: 2,
      name: 'fails',
      up: () => {
        throw cause;
      },
    };
    expect(migrateDocument({ version: 1 }, [rename, failing])).toEqual({
      type: 'error',
      reason: 'step-failed',
      version: 2,
      cause,
    });
  });
});
