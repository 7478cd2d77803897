import { deidentified, type Study, studyFiles, unzipped, zipped } from '@surae/exchange';
import fc from 'fast-check';
import { parquetReadObjects } from 'hyparquet';
import { expect, test } from 'vitest';
import { madeStudy, pushTrial, raiseTrial, studyPerson, studyVisit } from '../../support/made-study.ts';
import { runs } from '../../support/runs.ts';

const request = { secret: 'of this study', keepDevices: true };

test('keys, day offsets and ages stand for what was known; free text, hashes and bytes are gone', () => {
  const visits = [studyVisit(), studyVisit({ key: 'visit-2', at: '2026-03-29T08:00:00+02:00' })];
  const { study, out } = deidentified(madeStudy({ visits }), request);
  expect(study.people[0]).toMatchObject({ name: null, birthYear: null, ageYears: 69, note: null, bodyMassKg: 71.5 });
  expect(study.visits.map(({ dayOffset }) => dayOffset).sort()).toEqual([0, 28]);
  expect(study.visits.every(({ at, person }) => at === null && person === study.people[0].key)).toBe(true);
  expect(study.trials.every(({ sha256, raw, at }) => sha256 === null && raw === null && at === null)).toBe(true);
  expect(out).toMatchObject({ names: 1, hashes: 1, times: 5 });
});

test('a device keeps its name only where it is told to, and never one that holds a name of a person', () => {
  const trials = [raiseTrial(), raiseTrial({ key: 'trial-3', device: 'phone of Wilhelmina' })];
  const devices = (keepDevices: boolean): (string | null)[] =>
    deidentified(madeStudy({ trials }), { ...request, keepDevices })
      .study.trials.map(({ device }) => device)
      .sort((a, b) => String(a).localeCompare(String(b)));
  expect(devices(true)).toEqual([null, 'string at the heel']);
  expect(devices(false)).toEqual([null, null]);
});

test('words that stand where a code belongs are free text', () => {
  const leg = studyVisit().legs.left;
  const odd = studyVisit({ legs: { left: { ...leg, sore: 'since the fall at Easter' }, right: leg } });
  const { study, out } = deidentified(madeStudy({ visits: [odd] }), request);
  expect(study.visits[0].legs.left.sore).toBeNull();
  expect(study.visits[0].legs.right.sore).toBe('mid-portion');
  expect(out.strangeCodes).toBe(1);
});

test('why a set was counted again is free text, and its key and its time go', () => {
  const trial = raiseTrial();
  if (trial.result?.test !== 'heel-raise') throw new Error('a trial of raises has a report of raises');
  const again = {
    key: 'again',
    at: '2026-03-05T09:00:00+01:00',
    protocol: 'single-leg.floor',
    protocolHash: 'p',
    settingsHash: 's',
    software: 'surae 0.2.0',
    why: 'Wilhelmina asked for it',
    result: trial.result,
  } as const;
  const { study } = deidentified(madeStudy({ trials: [{ ...trial, recounts: [again] }] }), request);
  const [recount] = study.trials[0].recounts!;
  expect(recount).toMatchObject({ at: null, why: null, protocol: 'single-leg.floor', settingsHash: 's' });
  expect(recount.key).toMatch(/^R-/);
});

/** Everything that a reader of the bundle can see, packed or not. */
async function seenIn(study: Study): Promise<string> {
  const { files } = await studyFiles(study, {
    tables: ['csv', 'json-lines', 'parquet'],
    samples: true,
    raw: true,
    healthRecords: true,
    letters: true,
    deidentify: request,
    writtenOn: '2026-11-29',
  });
  const zip = zipped(files);
  const parts = [new TextDecoder('latin1').decode(zip)];
  for (const { name, bytes } of unzipped(zip, 'x.zip')) {
    parts.push(name, new TextDecoder().decode(bytes));
    if (name.endsWith('.parquet')) {
      parts.push(JSON.stringify(await parquetReadObjects({ file: bytes.slice().buffer })));
    }
  }
  return parts.join('\n').toLowerCase();
}

/** Letters that stand in no word of the bundle: what is drawn of them is found only if it leaked. */
const word = fc.stringMatching(/^[qxzžåø]{6,12}$/);

const person = fc.record({
  first: word,
  last: word,
  birthYear: fc.integer({ min: 1920, max: 2015 }),
  note: word,
  day: fc.date({ min: new Date('2020-01-01'), max: new Date('2025-12-31'), noInvalidDate: true }),
  epoch: fc.boolean(),
});

test('no name, year of birth, free text or date of the input stands anywhere in what leaves', async () => {
  const raises = raiseTrial();
  const pushes = pushTrial();
  // what stands in it of any study: the numbers of the two reports hold none of these years
  await fc.assert(
    fc.asyncProperty(fc.array(person, { minLength: 1, maxLength: 2 }), async (drawn) => {
      const told = drawn.map((one, i) => {
        const day = one.day.toISOString();
        const at = `${day.slice(0, 19)}+01:00`;
        const key = `${one.first}-${i}`;
        const about = { person: key, visit: `${one.last}-${i}`, note: one.note, at, file: `${one.first} ${day}.csv` };
        const startS = one.epoch ? one.day.getTime() / 1000 : 0;
        const timesS = Float64Array.of(startS, startS + 0.01);
        const trace = () => ({ groups: [{ timesS, channels: [] }] });
        return {
          needles: [
            one.first,
            one.last,
            one.note,
            day.slice(0, 10),
            day.slice(0, 10).replaceAll('-', ''),
            day.slice(11, 19),
          ],
          birthYear: one.birthYear,
          clock: one.epoch ? String(Math.floor(startS)).slice(0, 7) : undefined,
          person: studyPerson({ key, name: `${one.first} ${one.last}`, birthYear: one.birthYear, note: one.note }),
          visit: studyVisit({ ...about, key: about.visit }),
          trials: [
            {
              ...raises,
              ...about,
              key: `${key}-r`,
              trace,
              device: `${one.last} cell`,
              deviceNotes: day,
              setAsideWhy: one.note,
            },
            { ...pushes, ...about, key: `${key}-p`, reason: one.note, footwear: one.note },
          ],
        };
      });
      const study = madeStudy({
        people: told.map((one) => one.person),
        visits: told.map(({ visit }) => visit),
        trials: told.flatMap(({ trials }) => trials),
        plan: told.map((one) => ({
          key: 'l',
          person: one.person.key,
          at: '2026-02-02',
          code: 'raise',
          text: one.needles[2],
          sessionsPerWeek: 3,
          setCount: 3,
          repetitionCount: 15,
        })),
        totals: told.map((one) => ({
          key: one.needles[1],
          person: one.person.key,
          at: one.needles[3],
          dayOffset: 3,
          questionnaire: one.needles[0],
          languageVersion: one.needles[1],
          side: null,
          total: 12,
        })),
        reaches: told.map((one) => ({
          key: one.needles[1],
          person: one.person.key,
          at: one.needles[3],
          dayOffset: 3,
          side: 'left' as const,
          unit: one.needles[0],
          trials: [],
          best: null,
          pain: null,
          skipped: one.needles[2],
        })),
      });
      const seen = await seenIn(study);
      for (const { needles, birthYear, clock } of told) {
        for (const needle of needles) expect(seen).not.toContain(needle.toLowerCase());
        expect(seen).not.toMatch(new RegExp(`(?<![\\d.])${birthYear}(?![\\d.])`));
        if (clock !== undefined) expect(seen).not.toContain(clock);
      }
    }),
    runs(4, 200),
  );
});

test('of a language version a language, a place and a year stay, and nothing else does', () => {
  const total = { key: 'q', person: 'p', at: '2026-03-01', dayOffset: 2, side: 'left', total: 64 } as const;
  const told = ['de-CH 2019', 'fr', 'de', 'Okonkwo', 'translated by Okonkwo'].map((languageVersion) => ({
    ...total,
    key: languageVersion,
    questionnaire: 'visa-a',
    languageVersion,
  }));
  const { study, out } = deidentified(madeStudy({ totals: told }), { secret: 's', keepDevices: false });
  expect(study.totals?.map(({ languageVersion }) => languageVersion).sort()).toEqual(
    ['de', 'de-CH 2019', 'fr', null, null].sort(),
  );
  expect(study.totals?.every((one) => one.at === null && one.dayOffset === 2 && one.total === 64)).toBe(true);
  expect(out.texts).toBeGreaterThanOrEqual(2);
});

test('that test sees what is left in: the same study named holds all of it', async () => {
  const { files } = await studyFiles(madeStudy(), {
    tables: ['csv'],
    samples: false,
    raw: false,
    healthRecords: false,
    letters: false,
    deidentify: null,
    writtenOn: '2026-11-29',
  });
  const text = files.map(({ bytes }) => new TextDecoder().decode(bytes)).join('\n');
  for (const needle of ['Okonkwo', '1957', 'likes long walks', '2026-03-01']) expect(text).toContain(needle);
});

test('of raises for practice keys and times go, their heights stay, and they still name their trial', () => {
  const raises = [{ heightM: 0.1, heightUM: 0.002 }];
  const of = { person: 'person-1', visit: 'visit-1', at: '2026-03-01T09:20:00+01:00' } as const;
  const told = { placement: 'heel', protocol: 'of Ms Lind', origin: 'live' } as const;
  const one = { ...of, ...told, key: 'p', side: 'left', stopped: true, raises, trials: ['trial-1'] } as const;
  const { study } = deidentified(madeStudy({ practice: [one] }), request);
  const [left] = study.practice!;
  expect(left).toMatchObject({ at: null, placement: 'heel', protocol: null, raises, side: 'left', stopped: true });
  expect([left.person, left.visit]).toEqual([study.people[0].key, study.visits[0].key]);
  expect(study.trials.map(({ key }) => key)).toContain(left.trials[0]);
  expect(left.key).toMatch(/^W-/);
});
