import type {
  DoneItem,
  KneeToWall,
  MorningCheck,
  OnFeet,
  PersonNote,
  QuestionnaireTotal,
  Run,
  Target,
} from '@surae/casebook';

/** What can be written down on the line of time by hand. */
export type LogEntry =
  | { readonly kind: 'morning-check'; readonly body: MorningCheck }
  | { readonly kind: 'run'; readonly body: Run }
  | { readonly kind: 'on-feet'; readonly body: OnFeet }
  | { readonly kind: 'done-item'; readonly body: DoneItem }
  | { readonly kind: 'note'; readonly body: PersonNote }
  | { readonly kind: 'questionnaire-total'; readonly body: QuestionnaireTotal }
  | { readonly kind: 'knee-to-wall'; readonly body: KneeToWall }
  | { readonly kind: 'target'; readonly body: Target };

export type LogKind = LogEntry['kind'];

/** The kinds, in the order in which they are offered: what is asked most often first. */
export const logKinds = [
  'morning-check',
  'done-item',
  'run',
  'on-feet',
  'questionnaire-total',
  'knee-to-wall',
  'note',
  'target',
] as const satisfies readonly LogKind[];

/** An entry that was written down before. */
export type LoggedEntry = LogEntry & { readonly id: string };
