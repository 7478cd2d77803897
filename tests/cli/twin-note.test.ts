import type { AnyAssessed } from '@surae/study';
import { expect, test } from 'vitest';
import { entryOf, packedEntry, unpackedEntry } from '../../apps/cli/src/entry.ts';
import type { Want } from '../../apps/cli/src/run-plan.ts';
import { notedTwin } from '../../apps/cli/src/twin-note.ts';
import { assessedPulls, pullItem } from '../support/assessed-pulls.ts';
import { handMadeOutcome, handMadeRefusal } from '../support/hand-made-outcome.ts';
import { madeRamps, madeRecording } from '../support/made-recording.ts';

const WANTS: readonly Want[] = [
  { kind: 'json' },
  { kind: 'rows' },
  { kind: 'text', width: 60, drawsBlocks: true },
  { kind: 'text', width: 100, drawsBlocks: false },
];
const OUTCOMES: readonly AnyAssessed[] = [
  handMadeOutcome([100, 98, 96, 60]),
  assessedPulls(madeRecording(madeRamps([900, 920, 910])), pullItem({}, { person: 'P1' })),
];
const TWIN = 'a file with a name that is so long that the line breaks somewhere in the middle of it.csv';

test.each(WANTS)('a note put in later gives what it gives when it was known before: %j', (want) => {
  for (const outcome of OUTCOMES) {
    const plan = { want, carried: ['person'] };
    const width = want.kind === 'text' ? want.width : 80;
    const later = notedTwin(unpackedEntry(packedEntry(entryOf(outcome, plan)).body), TWIN, width);
    const before = unpackedEntry(packedEntry(entryOf({ ...outcome, sameAs: TWIN }, plan)).body);
    const { text, ...rest } = later;
    const { text: wanted, ...others } = before;
    expect(rest).toEqual(others);
    expect(text?.lines).toEqual(wanted?.lines);
    expect(JSON.stringify(later)).toContain('was in the list before');
  }
});

test('a refused one stays as it is', () => {
  const entry = entryOf(handMadeRefusal(), { want: { kind: 'json' }, carried: [] });
  expect(notedTwin(entry, TWIN, 80)).toBe(entry);
});
