import type { Report } from '@surae/analysis';
import type { Person, VisitSet } from '@surae/casebook';
import type { RecordStore } from '@surae/storage';
import type { Assessor } from '../contexts/capabilities.ts';

/** The final pass over a set, while its tester has time to look at it; what makes it comes when it is asked for. */
export async function earlyReport(
  set: VisitSet,
  person: Person,
  store: Pick<RecordStore, 'bytes'>,
  assessor: Pick<Assessor, 'final'>,
): Promise<Report> {
  const { assessSet } = await import('./assessment.ts');
  return assessSet(set, person, await store.bytes(set.bytesId), (trace, request) => assessor.final(trace, request));
}
