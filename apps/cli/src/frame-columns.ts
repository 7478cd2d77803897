import type { AnyAssessed, Outcome } from '@surae/study';
import { testOf } from '@surae/study/words';
import { softwareName } from './software.ts';

/** One thing that is said about a recording as a whole, under the same name in JSON and CSV. */
export interface FrameColumn {
  readonly key: string;
  readonly description: string;
  readonly value: (outcome: Outcome) => string | null;
}

const assessed = (outcome: Outcome, value: (found: AnyAssessed) => string | null): string | null =>
  outcome.status === 'ok' ? value(outcome) : null;

/** Which recording: these stand before everything else, in every table. */
export const FILE_COLUMN: FrameColumn = {
  key: 'file',
  description: 'the recording, as it was named on the command line or in the manifest',
  value: ({ item }) => item.file,
};

/** What the recording is, as far as it is known. */
export const TRIAL_COLUMNS: readonly FrameColumn[] = [
  { key: 'side', description: 'left or right', value: ({ item }) => item.about.side ?? null },
  { key: 'test', description: 'which test', value: ({ item }) => testOf(item.about) },
  {
    key: 'placement',
    description:
      'where the sensor was: heel, foot, trunk or platform; of an isometric test inline or platform (a plate under the forefoot); of hops platform or foot',
    value: (outcome) => assessed(outcome, ({ report }) => report.placement) ?? outcome.item.about.placement ?? null,
  },
  {
    key: 'protocol',
    description: 'the rules that repetitions, efforts or hops were judged by',
    value: (outcome) => assessed(outcome, ({ report }) => report.protocol.id) ?? outcome.item.about.protocol ?? null,
  },
];

/** Where a result comes from, so that it can be made again. */
export const ORIGIN_COLUMNS: readonly FrameColumn[] = [
  { key: 'sha256', description: 'SHA-256 of the bytes of the recording', value: (outcome) => outcome.sha256 },
  { key: 'software', description: 'name and version of the software', value: () => softwareName() },
  {
    key: 'settings_hash',
    description: 'SHA-256 of all settings and of the protocol with its parameters: equal only when both are equal',
    value: (outcome) => assessed(outcome, ({ settingsHash }) => settingsHash),
  },
  {
    key: 'protocol_hash',
    description: 'SHA-256 of the protocol with its parameters, the placement and the rule of the reference alone',
    value: (outcome) => assessed(outcome, ({ protocolHash }) => protocolHash),
  },
  { key: 'status', description: 'ok or refused', value: ({ status }) => status },
];

export const REASON_COLUMN: FrameColumn = {
  key: 'reason',
  description: 'why the recording was refused',
  value: (outcome) => (outcome.status === 'refused' ? outcome.reason : null),
};
