import { END_REASON_SENTENCES, type EndReason, type Protocol } from '@surae/shared';

/** The ends that can be chosen for a protocol; all of them where the protocol is not known here. */
export function endsOf(protocol: Protocol | undefined): readonly EndReason[] {
  return protocol?.endConditions ?? (Object.keys(END_REASON_SENTENCES) as EndReason[]);
}

/** Pain above which the protocol lets nobody go on, 0 to 10; null where it sets no limit or is not known. */
export function painLimitOf(protocol: Protocol | undefined): number | null {
  return protocol?.parameters.painLimit.value ?? null;
}
