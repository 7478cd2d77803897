import { type Episode, type EpisodeCourse, episodeCourses, undoOf } from '@surae/casebook';
import type { Json, RecordStore } from '@surae/storage';
import type { BookHand } from './taken-shelf.ts';

const episodeSchema = 1;

/** Episodes of people: written, corrected, ended and taken back, each by a document more. */
export class EpisodeDesk {
  private readonly store: Pick<RecordStore, 'documents'>;
  private readonly hand: Pick<BookHand, 'add'>;

  constructor(store: Pick<RecordStore, 'documents'>, hand: Pick<BookHand, 'add'>) {
    this.store = store;
    this.hand = hand;
  }

  /** Episodes of somebody, the oldest first, with what stood before their last entry. */
  async ofPerson(personId: string): Promise<readonly EpisodeCourse[]> {
    return episodeCourses(await this.store.documents({ whose: personId, kind: ['episode', 'amendment', 'removal'] }));
  }

  async add(personId: string, episode: Episode): Promise<void> {
    await this.hand.add({ kind: 'episode', schema: episodeSchema, about: personId, body: plain(episode) });
  }

  /** Says how members of an episode are from now on; what was told before stays readable. */
  async amend(id: string, change: Partial<Episode>): Promise<void> {
    await this.hand.add({ kind: 'amendment', schema: 1, about: id, body: { change: plain(change), why: null } });
  }

  /** Takes the last entry of an episode back. */
  async undo(course: EpisodeCourse): Promise<void> {
    await this.hand.add(undoOf(course));
  }
}

function plain(value: Partial<Episode>): Json {
  return JSON.parse(JSON.stringify(value)) as Json;
}
