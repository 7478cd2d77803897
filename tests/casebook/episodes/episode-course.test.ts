import { countingDocuments, type EpisodeCourse, episodeCourses, undoneWhy, undoOf } from '@surae/casebook';
import type { Json, StoredDocument } from '@surae/storage';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../../support/runs.ts';

const first = {
  ...{ sore: { left: 'no', right: 'insertion' }, onset: 'gradual', began: '2026-08', over: null },
  ...{ story: null, goal: null, loads: null },
};

/** Documents of one episode `e`, in the order in which they are given. */
class Pile {
  documents: StoredDocument[] = [];

  add(kind: string, about: string | null, body: Json, id = `d${this.documents.length}`): this {
    const sequence = this.documents.length;
    const at = `2026-09-01T09:00:${String(sequence % 60).padStart(2, '0')}.000Z`;
    this.documents.push({ id, kind, schema: 1, about, author: 'tester', at, body, hash: '', sequence });
    return this;
  }

  change(change: Json, why: string | null = null): this {
    return this.add('amendment', 'e', { change, why });
  }

  undo(): this {
    const { kind, about, body } = undoOf(this.course!);
    return this.add(kind, about, body);
  }

  get course(): EpisodeCourse | undefined {
    return episodeCourses(this.documents)[0];
  }

  get counting(): Json | undefined {
    return countingDocuments(this.documents).find(({ kind }) => kind === 'episode')?.body;
  }
}

const pile = (): Pile => new Pile().add('episode', 'p', first, 'e');

test('an episode stands as it was last corrected, with what stood before', () => {
  expect(pile().course).toMatchObject({ id: 'e', episode: first, before: null });
  const { course } = pile().change({ began: '2026-07' }).change({ over: '2026-10' });
  expect(course?.episode).toEqual({ ...first, began: '2026-07', over: '2026-10' });
  expect(course?.before).toEqual({ ...first, began: '2026-07' });
});

test('taking back goes entry by entry to the first one, and then takes the episode out; nothing is written over', () => {
  const made = pile().change({ began: '2026-07' }).change({ over: '2026-10' });
  const bodies = made.documents.map(({ body }) => body);
  expect(made.undo().course).toMatchObject({ episode: { began: '2026-07', over: null }, before: first });
  expect(made.undo().course).toMatchObject({ episode: first, before: null });
  expect(undoOf(made.course!)).toEqual({ kind: 'removal', schema: 1, about: 'e', body: { why: undoneWhy } });
  expect(made.undo().course).toBeUndefined();
  expect(made.counting).toBeUndefined();
  expect(made.documents.slice(0, bodies.length).map(({ body }) => body)).toEqual(bodies);
});

test('a member that was not there before is not asked again', () => {
  const made = pile().change({ goal: 'run 10 km', goalBy: '2027-05' }).undo();
  expect(made.counting).toEqual({ ...first, goalBy: null });
});

test('what cannot be read is passed over', () => {
  const made = pile().change({ began: 'last spring' });
  expect(made.course).toMatchObject({ episode: first, before: null });
  expect(new Pile().add('episode', 'p', { sore: 7 }, 'e').course).toBeUndefined();
});

test('whatever is corrected and taken back, what counts is what is shown', () => {
  const change = fc.constantFrom<Json>(
    { began: '2026-07' },
    { began: null, onset: 'sudden', pop: true },
    { over: '2026-10' },
    { goal: 'stairs', goalBy: '2027' },
    { onset: 'no' },
  );
  fc.assert(
    fc.property(fc.array(fc.option(change)), (steps) => {
      const made = pile();
      for (const step of steps) {
        if (step !== null) made.change(step);
        else if (made.course !== undefined) made.undo();
        const shown = made.course?.episode;
        const bare = (value: object | undefined) =>
          value && Object.fromEntries(Object.entries(value).filter(([, one]) => one !== null));
        expect(bare(made.counting as object | undefined)).toEqual(bare(shown));
      }
    }),
    runs(200, 5000),
  );
});
