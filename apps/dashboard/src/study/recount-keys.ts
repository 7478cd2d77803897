import type { BlindVerdict } from '@surae/study';

/** What a key asks for while somebody counts. */
export type RecountAct =
  | { readonly act: 'move'; readonly byS: number }
  | { readonly act: 'end'; readonly direction: 1 | -1 }
  | { readonly act: 'peak' | 'item'; readonly direction: 1 | -1 }
  | { readonly act: 'say'; readonly verdict: BlindVerdict }
  | { readonly act: 'take' | 'undo' | 'done' | 'help' };

/** Steps of the cursor [s]; ours. */
const fineS = 0.05;
const coarseS = 1;

/**
 * The keys by what is on them, whatever the layout of the keyboard: digits say a verdict, letters of the left hand go from peak to peak.
 * `move` is in the direction of time: the picture is never mirrored.
 */
const keys: Readonly<Record<string, RecountAct>> = {
  ArrowRight: { act: 'move', byS: fineS },
  ArrowUp: { act: 'move', byS: fineS },
  ArrowLeft: { act: 'move', byS: -fineS },
  ArrowDown: { act: 'move', byS: -fineS },
  Home: { act: 'end', direction: -1 },
  End: { act: 'end', direction: 1 },
  d: { act: 'peak', direction: 1 },
  PageDown: { act: 'peak', direction: 1 },
  a: { act: 'peak', direction: -1 },
  PageUp: { act: 'peak', direction: -1 },
  '1': { act: 'say', verdict: 'yes' },
  '2': { act: 'say', verdict: 'no' },
  '3': { act: 'say', verdict: 'cannot_tell' },
  '0': { act: 'take' },
  Delete: { act: 'take' },
  Backspace: { act: 'take' },
  u: { act: 'undo' },
  b: { act: 'item', direction: -1 },
  n: { act: 'item', direction: 1 },
  Enter: { act: 'done' },
  '?': { act: 'help' },
};

/** What a key asks for; undefined for a key that belongs to the browser or to what has the focus. */
export function actOf(
  event: Pick<KeyboardEvent, 'key' | 'shiftKey' | 'ctrlKey' | 'metaKey' | 'altKey'>,
): RecountAct | undefined {
  if (event.ctrlKey || event.metaKey || event.altKey) return undefined;
  const name = event.key.length === 1 ? event.key.toLowerCase() : event.key;
  const act = Object.hasOwn(keys, name) ? keys[name] : undefined;
  if (act?.act === 'move' && event.shiftKey) return { act: 'move', byS: Math.sign(act.byS) * coarseS };
  return act;
}
