import type { SetChoice } from '@surae/casebook';
import { LIVE_WORDS, SIGNAL_RULES } from '@surae/shared';
import { fill } from '../words/fill.ts';
import { PlateWatch } from './plate-watch.ts';
import { type SourceSeen, SourceWatch } from './source-watch.ts';

type Seen = Pick<SourceSeen, 'silentS'>;

/** What watches the source of a set: also who stands on a plate, above what it shows when it is empty. */
export function watchOf({ placement, setUp }: Pick<SetChoice, 'placement' | 'setUp'>): SourceWatch {
  const forS = SIGNAL_RULES.silentTold.value;
  if (placement !== 'platform') return new SourceWatch(forS);
  const zero = setUp?.zero ?? null;
  const levelN = zero?.quantity === 'force' ? zero.level : 0;
  return new SourceWatch(forS, new PlateWatch(levelN, setUp?.readAs?.['force'] ?? 1));
}

/** Why a test that is stopped now was ended by its sensor; null where samples come. */
export function lostWords({ silentS }: Seen): string | null {
  return silentS === null ? null : fill(LIVE_WORDS['silent-ended'], { seconds: silentS });
}

/** Why a test ends by itself now: samples have stayed away too long although the sensor is connected; null where it goes on. */
export function silentEnd(seen: Seen, origin: SetChoice['origin']): string | null {
  // a simulated person and a played recording end by themselves
  return origin === 'live' && (seen.silentS ?? 0) >= SIGNAL_RULES.silentEnds.value ? lostWords(seen) : null;
}
