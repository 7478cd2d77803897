import { sampleText, sha256Hex } from '@surae/records';
import { simulateSet } from '@surae/simulation';
import type { HashedFile, StudySources } from './study-content.ts';
import type { FoundRecording } from './study-shelf.ts';

/** Invented people: repetitions of the first and the second visit, and a seed. */
const PEOPLE = [
  { person: 'D01', counts: [14, 17], seed: 4101 },
  { person: 'D02', counts: [9, 13], seed: 4102 },
  { person: 'D03', counts: [18, 19], seed: 4103 },
  { person: 'D04', counts: [11, 15], seed: 4104 },
  { person: 'D05', counts: [16, 18], seed: 4105 },
  { person: 'D06', counts: [7, 12], seed: 4106 },
  { person: 'D07', counts: [13, 14], seed: 4107 },
  { person: 'D08', counts: [10, 14], seed: 4108 },
] as const;

const VISITS = ['before', 'after'] as const;

/** What is declared of the invented study. */
const DECLARED = {
  kind: 'surae-study',
  version: 1,
  title: 'Invented: heel raises before and after eight weeks of stairs',
  question: 'Do people raise their heel more often after eight weeks of climbing stairs than before?',
  amends: null,
  test: 'heel-raise',
  protocol: { id: 'single-leg.floor', parameters: {} },
  settings: {},
  outcomes: { primary: 'count.scored', secondary: ['measures.peak_height_mm'] },
  trials: [],
  comparison: {
    of: 'visits',
    manifest: null,
    first: 'after',
    second: 'before',
    scale: 'difference',
    perPerson: 'only',
    level: 0.95,
    margin: 2,
  },
  exclusions: [
    { code: 'few', words: 'fewer than three attempts', rule: { column: 'count.attempted', below: 3 } },
    { code: 'unusable', words: 'not to be interpreted', rule: { column: 'gate.usable', is: ['no'] } },
    { code: 'held', words: 'the tester saw that the hands carried weight', rule: null },
    { code: 'signal', words: 'the signal cannot be read', rule: null },
  ],
  blinding: { seed: 'drawn from a hat', raters: ['first', 'second'], repeatedShare: 0.25, leastBetween: 2 },
  choices: [
    { parameter: 'protocol.heightFraction', values: [0.6, 0.9], why: 'both are in use' },
    { parameter: 'exclusion.unusable', values: ['not-applied'], why: 'some keep every trial' },
  ],
};

const COLUMNS = 'file,person,visit,side,placement,test,heel_lever_mm,body_mass_kg,end_reason';

function hashed(name: string, text: string): HashedFile {
  const bytes = new TextEncoder().encode(text);
  return { name, bytes, sha256: sha256Hex(bytes) };
}

/** One recording of a string at the heel, some of it lost where it is said. */
function recording(seed: number, count: number, hasHole: boolean): { readonly text: string; readonly row: string } {
  const { trace, subject } = simulateSet({
    placement: 'heel',
    level: 'clean',
    seed,
    count,
    cycleS: 2,
    faults: { ownTempoChance: 0, beatSpread: 0.02, longHoldChance: 0 },
  });
  const [group] = trace.groups;
  const { timesS, channels } = group!;
  const heights = channels[0]!.samples;
  const all = Array.from(timesS, (timeS, at) => [timeS.toFixed(5), (heights[at]! * 1000).toFixed(2)]);
  const share = (part: number): number => Math.round(part * all.length);
  // samples that were lost on the way
  const rows = hasHole ? [...all.slice(0, share(0.4)), ...all.slice(share(0.46))] : all;
  const { heelLeverM, bodyMassKg } = subject;
  return {
    text: sampleText(['simulated: nobody was tested'], ['time [s]', 'heel_height [mm]'], rows),
    row: `${(heelLeverM * 1000).toFixed(1)},${bodyMassKg.toFixed(1)}`,
  };
}

/**
 * A study of invented people, made here: its files as somebody would choose them.
 *
 * @param tell - is told before each recording how many there are, and is waited for, so that a screen can be drawn meanwhile
 */
export async function demoStudy(
  tell: (done: number, of: number) => Promise<unknown>,
): Promise<{ readonly title: string; readonly sources: StudySources; readonly recordings: readonly FoundRecording[] }> {
  const rows = [COLUMNS];
  const recordings: FoundRecording[] = [];
  for (const { person, counts, seed } of PEOPLE) {
    for (const [at, visit] of VISITS.entries()) {
      await tell(recordings.length, PEOPLE.length * VISITS.length);
      const file = `${person}-${visit}.csv`;
      const { text, row } = recording(seed + 50 * at, counts[at]!, person === 'D05' && at === 1);
      rows.push(`${file},${person},${visit},left,heel,heel-raise,${row},fatigue`);
      // one file did not come over from the laboratory
      recordings.push(person === 'D07' && at === 0 ? hashed(file, text.slice(0, 40)) : hashed(file, text));
    }
  }
  return {
    title: DECLARED.title,
    sources: {
      study: hashed('study.json', `${JSON.stringify(DECLARED, null, 2)}\n`),
      manifest: hashed('manifest.csv', `${rows.join('\n')}\n`),
      earlier: [],
      recipes: [],
    },
    recordings,
  };
}
