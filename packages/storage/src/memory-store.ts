import { KeptRecords, type RecordsOptions } from './kept-records.ts';
import { MemoryRows } from './memory-rows.ts';
import { plainCodec } from './plain-codec.ts';

/** A store that lives as long as the program: for tests, and where the browser gives none. */
export class MemoryStore extends KeptRecords {
  constructor(options: RecordsOptions = {}) {
    super(new MemoryRows(), plainCodec, options);
  }
}
