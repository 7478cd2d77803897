import { defaultSettings } from '@surae/analysis';
import type { Outcome } from '@surae/study';
import { expect, test } from 'vitest';
import { manifestStudy } from '../../apps/cli/src/manifest-study.ts';
import { handMadeOutcome, handMadeRefusal } from '../support/hand-made-outcome.ts';
import { MemoryIo } from '../support/memory-io.ts';

const made = handMadeOutcome([100, 98, 96, 60]);

/** The same outcome under another row of a manifest. */
function row(carried: Record<string, string>, side: 'left' | 'right' = 'left'): Outcome {
  return {
    ...made,
    item: { ...made.item, carried, about: { ...made.item.about, side, bodyMassKg: 62, heelLeverMm: 165 } },
  };
}

const told = {
  person: 'P1',
  visit: '2',
  date: '2026-03-08',
  sex: 'women',
  age_years: '38.5',
  height_cm: '168',
  pregnant: 'no',
  one_sided_sport: 'yes',
};

const outcomes = [
  row({
    ...told,
    symptomatic: 'dominant',
    earlier_injury: 'yes',
    injury_months: '30',
    flare: 'no',
    settles_h: '6',
    pain_peak: '3',
    end_reason: 'pain',
  }),
  row({ ...told, symptomatic: 'none', source: 'person', footwear: 'barefoot' }, 'right'),
  row({ person: 'P1', visit: '1', date: '2026-03-01' }),
  handMadeRefusal(),
];

const study = manifestStudy(outcomes, defaultSettings(), new MemoryIo().io);

test('people and visits as the manifest names them', () => {
  expect(study.people).toMatchObject([
    { key: 'P1', name: null, sex: 'women', ageYears: 38.5, bodyHeightM: 1.68, bodyMassKg: 62, heelLeverM: 0.165 },
    { key: 'P2', sex: null, bodyMassKg: null },
  ]);
  expect(study.visits.map(({ key, dayOffset }) => [key, dayOffset])).toEqual([
    ['P1 / 2', 7],
    ['P1 / 1', 0],
  ]);
  expect(study.visits[0]).toMatchObject({
    about: ['one-sided-sport'],
    legs: {
      left: {
        sore: 'dominant',
        injury: '30-months-ago',
        irritability: { flare: 'no', settles: '6-hours', stiffness: null },
      },
      right: { sore: 'none', injury: null, irritability: { flare: null } },
    },
  });
});

test('a trial for each row, in its order; what was refused says why', () => {
  expect(study.trials.map(({ key, status }) => `${key} ${status}`)).toEqual([
    't0001 assessed',
    't0002 assessed',
    't0003 assessed',
    't0004 refused',
  ]);
  expect(study.trials[0]).toMatchObject({
    file: 'left, first.csv',
    endReason: 'pain',
    painPeak: 3,
    side: 'left',
    person: 'P1',
    visit: 'P1 / 2',
  });
  expect(study.trials[1]).toMatchObject({ origin: 'person', footwear: 'barefoot', side: 'right' });
  expect(study.trials[3]).toMatchObject({
    reason: 'bad.csv: there is no such file',
    result: null,
    trace: null,
    raw: null,
  });
});

test('a recording is read when it is asked for, and its bytes keep their ending', async () => {
  const memory = new MemoryIo();
  memory.files.set(
    'left, first.csv',
    `time [s],heel_height [mm]
${Array.from(
  { length: 12 },
  (_, i) => `${i / 50},${i}
`,
).join('')}`,
  );
  const [first] = manifestStudy(outcomes, defaultSettings(), memory.io).trials;
  const trace = await first.trace!();
  expect([...trace.groups[0].channels[0].samples]).toEqual(Array.from({ length: 12 }, (_, i) => i / 1000));
  expect((await first.raw!()).ending).toBe('csv');
});

test('what a recording says of its device is told', () => {
  expect(study.trials[0].deviceNotes).toBe('plate 3; zeroed');
  expect(study.trials[3].deviceNotes).toBeNull();
});

test('one leg alone has nothing beside it', () => {
  expect(study.visits[1].compared()).toEqual([]);
});
