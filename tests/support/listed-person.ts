import type { CaseloadEntry, EpisodeLine, VisitLine } from '@surae/casebook';

/** A time by day of the calendar: noon of so many days after 1 March 2026. */
export function dayAfter(days: number): string {
  return new Date(Date.UTC(2026, 2, 1 + days, 12)).toISOString();
}

/** An episode of the right tendon, begun and written down on day 0. */
export const episodeLine: EpisodeLine = {
  id: 'e',
  at: dayAfter(0),
  sore: { left: 'no', right: 'mid-portion' },
  onset: 'gradual',
  began: '2026-03-01',
};

/** A visit of a day in which somebody was tested, and that is finished. */
export function testedOn(days: number, changes: Partial<VisitLine> = {}): VisitLine {
  return { id: `v${days}`, begunAt: dayAfter(days), closed: true, answered: true, tested: true, ...changes };
}

type Changes = Partial<Omit<CaseloadEntry, 'person' | 'facts'>> & {
  readonly person?: Partial<CaseloadEntry['person']>;
  readonly facts?: Partial<CaseloadEntry['facts']>;
};

/** Somebody of whom everything is known on day 0 and who asks for nothing then. */
export function listedPerson({ person, facts, ...rest }: Changes = {}): CaseloadEntry {
  return {
    person: { id: 'p', name: 'A 17', bodyMassKg: 70, heelLeverM: 0.18, demo: false, ...person },
    amended: [],
    visits: [],
    facts: { massAt: dayAfter(0), massBefore: null, episodes: [], morning: null, flareTold: null, ...facts },
    ...rest,
  };
}
