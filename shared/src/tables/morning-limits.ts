import { TODAY_RULES, type TodayRule } from './today-rules.ts';

const practice = { version: '1', source: 'common practice, no source', mark: 'common-practice', unit: '1' } as const;

/** Pain on a morning, of 0 to 10, by which somebody at home is answered; the rises are over the usual level of the leg. */
export const MORNING_LIMITS = {
  /** where no usual level is known: more is no steady morning */
  holdAbove: { ...practice, id: 'morning.hold-above', value: 2 },
  /** more is eased, whatever is usual */
  easedAbove: { ...practice, id: 'morning.eased-above', value: 5 },
  /** a rise of more is no steady morning */
  holdRise: { ...practice, id: 'morning.hold-rise', value: 1 },
  /** a rise of more is eased: the same rise that a clinic is told of as a flare */
  easedRise: TODAY_RULES.morningRiseMost,
} as const satisfies Readonly<Record<string, TodayRule>>;

/** Stiffness of a morning, by which a session counts as too much. */
export const STIFFNESS_LIMITS = {
  /** minutes over the usual ones, of which more counts as doubled: five told as ten are no more than a rounded answer */
  doubledOver: { ...practice, id: 'stiffness.doubled-over', unit: 'min', value: 5 },
} as const satisfies Readonly<Record<string, TodayRule>>;
