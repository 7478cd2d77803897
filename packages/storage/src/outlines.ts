import type { Codec } from './codec.ts';
import type { Json } from './document.ts';
import { isReadable } from './readable.ts';
import type { OutlineMaker, OutlineMark, Outlines } from './record-store.ts';
import type { KeyRow, Rows } from './rows.ts';

/** The name under which it is kept up to where they hold. */
const settingName = 'outlines';

/** Documents since the mark that are looked at; after more of them making everybody's anew is as quick [-]; ours. */
const mostSince = 500;

interface Kept {
  readonly made: string;
  readonly upTo: number;
}

async function keptOf(codec: Codec, value: Json | Uint8Array | undefined): Promise<Kept | undefined> {
  if (value === undefined) return undefined;
  const opened = await codec.openSetting(settingName, value);
  return isReadable(opened) ? (opened.value as unknown as Kept) : undefined;
}

/** People of whom something of these kinds came after a place; undefined where that cannot be told of each. */
async function touchedSince(rows: Rows, upTo: number, kinds: readonly string[]): Promise<Set<string> | undefined> {
  const since = await rows.documentsAfter(upTo, mostSince);
  const touched = since.filter(({ kind }) => kinds.includes(kind)).map(({ whose }) => whose ?? null);
  // of nobody: it may be about anybody
  if (since.length === mostSince || touched.includes(null)) return undefined;
  return new Set(touched.filter((whose) => whose !== null));
}

const isPerson = ({ whose, erased }: KeyRow): boolean => whose !== '' && !erased;

/** Outlines that one maker made: see {@link RecordStore.outlines}. */
export async function readOutlines(rows: Rows, codec: Codec, { made, kinds }: OutlineMaker): Promise<Outlines> {
  if (codec.outlines === null) return { kept: new Map(), stale: null, mark: null };
  const [setting, last] = await Promise.all([rows.setting(settingName), rows.lastDocument()]);
  const mark = { before: setting instanceof Uint8Array ? setting : undefined, upTo: last };
  const nothing = { kept: new Map<string, Json>(), stale: null, mark };
  const known = await keptOf(codec, setting);
  if (known?.made !== made || known.upTo > last) return nothing;
  const [touched, keys] = await Promise.all([touchedSince(rows, known.upTo, kinds), rows.keys()]);
  if (touched === undefined) return nothing;
  const people = keys.filter(isPerson);
  const kept = await codec.outlines.open(
    people.filter(({ whose }) => !touched.has(whose)),
    made,
  );
  return { kept, stale: people.flatMap(({ whose }) => (kept.has(whose) ? [] : [whose])), mark };
}

/** Keeps outlines: see {@link RecordStore.keepOutlines}. */
export async function keepOutlines(
  rows: Rows,
  codec: Codec,
  made: string,
  outlines: ReadonlyMap<string, Json>,
  { before, upTo }: OutlineMark,
): Promise<boolean> {
  if (codec.outlines === null) return false;
  const sealed = await codec.outlines.seal(outlines, made);
  // somebody without a key has no place for one, and would be missing among them the next time
  if ([...outlines].some(([whose, outline]) => outline !== null && !sealed.has(whose))) return false;
  const value = await codec.sealSetting(settingName, { made, upTo });
  return rows.keepOutlines(sealed, { name: settingName, before, value: value as Uint8Array });
}
