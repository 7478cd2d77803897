import { MemoryStore } from '@surae/storage';
import { recordedStream } from '../../apps/dashboard/src/demo/recorded-stream.ts';
import { VisitBook } from '../../apps/dashboard/src/journey/visit-book.ts';
import { madeReport, sureCount } from './made-visit.ts';

/** A clinic of one person with so many sets, each with the bytes of a few seconds. */
export async function recordedClinic(sets: number): Promise<MemoryStore> {
  const store = new MemoryStore();
  const book = new VisitBook(store, { isoNow: () => '2026-04-01T10:00:00+02:00' }, 'test');
  const { id: personId } = await book.addPerson({ name: 'Bram Vale', bodyMassKg: null, heelLeverM: null, demo: false });
  const visit = await book.beginVisit(personId);
  const report = madeReport('left', sureCount(3));
  const { id: protocolId, fingerprint: protocolFingerprint } = report.protocol;
  const choice = { side: 'left', protocolId, protocolFingerprint, placement: 'heel', origin: 'replayed' } as const;
  for (let at = 0; at < sets; at += 1) {
    const timesS = Float64Array.from({ length: 300 }, (_, i) => i / 100);
    const samples = timesS.map((timeS) => 0.05 * Math.sin(timeS + at));
    const channels = [{ quantity: 'heel-height', axis: null, samples }] as const;
    const bytesId = await recordedStream(await book.openBytes(visit, 'set'), { timesS, channels: [...channels] });
    const setId = await book.record(visit, { kind: 'set-begun', choice, bytesId });
    await book.record(visit, { kind: 'set-result', setId, report, settingsHash: 'made' });
  }
  return store;
}
