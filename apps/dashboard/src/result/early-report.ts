import type { Report } from '@surae/analysis';
import type { Person, Visit, VisitSet } from '@surae/casebook';
import type { RecordStore } from '@surae/storage';
import type { Assessor } from '../contexts/capabilities.ts';
import type { FinalPass } from './assessment.ts';

/** The final pass over a set, while its tester has time to look at it; what makes it comes when it is asked for. */
export async function earlyReport(
  visit: Visit,
  set: VisitSet,
  person: Person,
  store: Pick<RecordStore, 'bytes'>,
  assessor: Pick<Assessor, 'final'>,
): Promise<Report> {
  const [{ assessSet }, { practiceAgain }] = await Promise.all([
    import('./assessment.ts'),
    import('./practice-again.ts'),
  ]);
  const final: FinalPass = (trace, request) => assessor.final(trace, request);
  const practice = await practiceAgain(visit, set, person, (id) => store.bytes(id), final);
  return assessSet(set, person, await store.bytes(set.bytesId), final, { practice });
}
