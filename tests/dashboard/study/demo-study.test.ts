import { expect, test } from 'vitest';
import { demoStudy } from '../../../apps/dashboard/src/study/demo-study.ts';
import { studyContent } from '../../../apps/dashboard/src/study/study-content.ts';

test('the invented study can be followed, says that nobody was tested, and is the same every time', async () => {
  const told: number[] = [];
  const { title, sources, recordings } = await demoStudy((done) => Promise.resolve(told.push(done)));
  const { declared, items } = studyContent(sources);
  expect(title).toBe(declared.study.title);
  expect(title).toMatch(/^Invented/);
  expect(items).toHaveLength(16);
  expect(told).toHaveLength(16);
  expect(items.map(({ file }) => file)).toEqual(recordings.map(({ name }) => name));
  expect(recordings.every((one) => 'bytes' in one)).toBe(true);
  const [first] = recordings as readonly { readonly bytes: Uint8Array }[];
  expect(new TextDecoder().decode(first.bytes)).toMatch(
    /^# simulated: nobody was tested\r?\ntime \[s\],heel_height \[mm\]/,
  );
  expect((await demoStudy(() => Promise.resolve())).recordings).toEqual(recordings);
});
