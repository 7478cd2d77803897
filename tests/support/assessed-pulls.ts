import { usualSettings } from '../../apps/cli/src/settings-file.ts';
import { type AssessedPulls, assessPullFile } from '../../packages/study/src/listed/assess-pull-file.ts';
import type { GivenAbout, WorkItem } from '../../packages/study/src/listed/work-list.ts';
import { NOTHING_GIVEN } from './hand-made-outcome.ts';

/** An item of the list with nothing said about it but what is given. */
export function pullItem(about: Partial<GivenAbout> = {}, carried: Readonly<Record<string, string>> = {}): WorkItem {
  return {
    file: 'pull.csv',
    path: 'pull.csv',
    about: { ...NOTHING_GIVEN, test: 'isometric', placement: 'platform', side: 'left', ...about },
    carried,
    refusal: undefined,
  };
}

/** What the command makes of the text of a recording. */
export function assessedPulls(text: string, item: WorkItem = pullItem(), settings = usualSettings()): AssessedPulls {
  const outcome = assessPullFile(item, new TextEncoder().encode(text), settings);
  if (outcome.status === 'refused') throw new Error(outcome.reason);
  return outcome;
}
