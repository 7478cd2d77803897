import { type Entry, type Recount, recountSchema, recountsIn, visitEventKinds } from '@surae/casebook';
import type { Json, StoredDocument } from '@surae/storage';
import type { BookHand } from './taken-shelf.ts';

/** Everything that the line of time of a person is made of. */
const courseKinds = [
  'person',
  'person-amended',
  'episode',
  'plan-item',
  'done-item',
  'morning-check',
  'run',
  'on-feet',
  'questionnaire-total',
  'runs-whole',
  'knee-to-wall',
  'note',
  'target',
  'visit',
  ...visitEventKinds,
  'verdict-by-hand',
  'recount',
] as const;

function plain(body: object): Json {
  return JSON.parse(JSON.stringify(body)) as Json;
}

/** What is written down about a person beside the visits: added, corrected, taken back, each by a document; nothing is changed. */
export class PersonLog {
  private readonly hand: BookHand;

  constructor(hand: BookHand) {
    this.hand = hand;
  }

  /** Documents of a person as they count. */
  documents(personId: string): Promise<readonly StoredDocument[]> {
    return this.hand.read({ whose: personId, kind: courseKinds });
  }

  /** Writes something down about a person; gives the id of its document. */
  async add(personId: string, { kind, body }: { readonly kind: string; readonly body: object }): Promise<string> {
    return (await this.hand.add({ kind, schema: 1, about: personId, body: plain(body) })).id;
  }

  /** Sets of a visit that were counted again, in their order. */
  async recounts(visitId: string): Promise<readonly Entry<Recount>[]> {
    return recountsIn(await this.hand.read({ about: visitId, kind: 'recount' }));
  }

  /** Keeps a set that was counted again beside its first result; gives the id of its document. */
  async addRecount(visitId: string, recount: Recount): Promise<string> {
    return (await this.hand.add({ kind: 'recount', schema: recountSchema, about: visitId, body: plain(recount) })).id;
  }

  /** Takes a document out of what counts; it stays readable. */
  async takeOut(id: string, why: string): Promise<void> {
    await this.hand.add({ kind: 'removal', schema: 1, about: id, body: { why } });
  }

  /** Members of a body as they are from now on; the others stay. Gives the id of the correction. */
  async correct(id: string, change: Readonly<Record<string, unknown>>, why: string): Promise<string> {
    return (await this.hand.add({ kind: 'amendment', schema: 1, about: id, body: plain({ change, why }) })).id;
  }
}
