import type { RecordStore } from '@surae/storage';
import type { Cluster } from './cluster/cluster.ts';
import type { Patience } from './cluster/database.ts';
import type { DatabaseAddress } from './cluster/database-address.ts';
import type { Log } from './log.ts';
import type { Pool } from './pool.ts';
import type { RunPlan } from './run-plan.ts';

/** What a name stands for on the disk. */
export interface Listed {
  readonly name: string;
  /** a link to a file is a file; one to a folder is neither, for it may lead in a circle */
  readonly kind: 'file' | 'folder' | 'other';
}

/** A file that is written a piece at a time. */
export interface FileOut {
  write(content: string | Uint8Array): void;
  close(): void;
}

/** How many workers a run has, and the memory of each; undefined is what the machine gives. */
export interface PoolSize {
  readonly workers: number | undefined;
  readonly memoryMb: number | undefined;
  /** recordings that are known to come; undefined where nobody knows */
  readonly recordings: number | undefined;
}

/** Everything the command does to the outside: the only door to files and the terminal, so that a test can stand in it. */
export interface Io {
  readonly writeOut: (text: string) => void;
  readonly writeError: (text: string) => void;
  /** what comes on standard input */
  readonly input: () => AsyncIterable<Uint8Array>;
  /** the bytes of a file, never changed; of a file in a zip as well */
  readonly readFile: (path: string) => Promise<Uint8Array>;
  /** the same in order, a piece at a time, for files that need not fit in memory */
  readonly readChunks: (path: string) => AsyncIterable<Uint8Array>;
  readonly writeFile: (path: string, content: string | Uint8Array) => void;
  /** a file that is begun anew */
  readonly openFile: (path: string) => FileOut;
  readonly rename: (from: string, to: string) => void;
  readonly remove: (path: string) => void;
  /** lines that are only added to; without a name they lie somewhere until the run ends */
  readonly openLog: (path: string | undefined) => Log;
  readonly makeFolder: (path: string) => void;
  readonly exists: (path: string) => boolean;
  readonly kindOf: (path: string) => 'file' | 'folder' | undefined;
  /** what lies in a folder, in no order */
  readonly list: (folder: string) => readonly Listed[];
  /** names of the files in a zip */
  readonly zipNames: (path: string) => Promise<readonly string[]>;
  /** what assesses recordings by a plan */
  readonly startPool: (plan: RunPlan, size: PoolSize) => Promise<Pool>;
  /** calls once when the run is asked to stop, with the number of the signal; gives what ends the watch */
  readonly onStop: (handler: (signal: number) => void) => () => void;
  /** milliseconds on a clock that only goes on */
  readonly nowMs: () => number;
  /** the day on the calendar of the place: 2026-03-01 */
  readonly today: () => string;
  /** a secret that nobody can guess and nobody has had before */
  readonly drawSecret: () => string;
  /** what somebody types without its being shown; undefined where nobody can type */
  readonly askSecret: (prompt: string) => Promise<string | undefined>;
  /** the store in a folder, to be read; `secret` gives what opens one that is encrypted */
  readonly openStore: (folder: string, secret: () => Promise<string>) => Promise<RecordStore>;
  /** the runs in a database */
  readonly openCluster: (address: DatabaseAddress, patience: Patience) => Promise<Cluster>;
  /** a variable of the environment */
  readonly variable: (name: string) => string | undefined;
  /** a path from the root on */
  readonly fullPath: (path: string) => string;
  /** characters in a line of the output */
  readonly width: number;
  /** whether a person watches standard error */
  readonly watched: boolean;
  /** whether results and progress would stand on the same terminal */
  readonly shared: boolean;
  /** whether block and line characters can be drawn */
  readonly drawsBlocks: boolean;
}
