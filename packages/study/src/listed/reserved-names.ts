import { EFFORT_COLUMNS, PULL_COLUMNS, REPETITION_COLUMNS, SET_COLUMNS } from '@surae/shared';

/** What is said about a recording as a whole beside its figures: which one, what it is, where its result comes from. */
export const FRAME_KEYS = [
  ...['file', 'side', 'test', 'placement', 'protocol'],
  ...['sha256', 'software', 'settings_hash', 'protocol_hash', 'status', 'reason'],
] as const;

/** Names that a column of a manifest cannot have, because results have them. */
export function reservedNames(): ReadonlySet<string> {
  const figures = [...REPETITION_COLUMNS, ...SET_COLUMNS, ...EFFORT_COLUMNS, ...PULL_COLUMNS].flatMap(({ key }) => [
    key,
    key.split('.')[0]!,
  ]);
  return new Set([
    ...FRAME_KEYS,
    ...figures,
    'repetitions',
    'efforts',
    'not_efforts',
    'doubtful',
    'block_differences',
    'gate_reasons',
    'issues',
    'withheld',
    'code',
    'severity',
    'details',
    'from_s',
    'to_s',
    'sentence',
  ]);
}
