import type { TakenRecording, Visit } from '@surae/casebook';
import type { SensorMaker } from '../contexts/capabilities.ts';
import { offeredTo } from '../journey/taken-shelf.ts';
import type { VisitBook } from '../journey/visit-book.ts';
import type { HandedRecording } from './handed-recording.ts';
import { playsRecordings } from './recording-chooser.ts';
import { storeWords } from './store-words.ts';

type OfVisit = Pick<Visit, 'id' | 'personId'>;

/** The recording that stands ready for a visit; one that is somebody else's, or was put to another visit, does not. */
export function handedFor(sensors: SensorMaker, visit: OfVisit): HandedRecording | undefined {
  const handed = playsRecordings(sensors) ? sensors.handed : undefined;
  return handed?.taken === undefined || offeredTo([handed.taken], visit).length > 0 ? handed : undefined;
}

/**
 * Says whose a recording is that was taken in, before it is played in a visit; from then on it stands ready for that visit alone.
 *
 * @returns why that could not be kept, in words; empty where it was
 */
export async function useTaken(
  sensors: SensorMaker,
  book: Pick<VisitBook, 'taken'>,
  taken: TakenRecording,
  { id, personId }: OfVisit,
): Promise<string> {
  try {
    await book.taken.use(taken, id, personId);
  } catch (error) {
    return storeWords(error);
  }
  if (playsRecordings(sensors) && sensors.handed?.taken?.id === taken.id) {
    sensors.handOver({ ...sensors.handed, taken: { ...taken, personId, usedIn: [id] } });
  }
  return '';
}
