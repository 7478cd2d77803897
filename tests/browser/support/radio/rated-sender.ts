/** What was sent, and when by the clock of this process. */
export interface Sent {
  readonly count: number;
  readonly spanMs: number;
}

function nextMillisecond(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 1));
}

/** Sends packets at a rate, or whatever else is due at each beat; late ones follow at once where the machine was busy. */
export async function sendAtRate<T>(
  packets: readonly T[],
  rateHz: number,
  send: (packet: T) => boolean,
): Promise<Sent> {
  const startMs = performance.now();
  let next = 0;
  while (next < packets.length) {
    const due = Math.min(packets.length, 1 + Math.floor(((performance.now() - startMs) * rateHz) / 1000));
    for (; next < due; next += 1) {
      if (!send(packets[next])) throw new Error(`Nobody listened to packet ${next} of ${packets.length}.`);
    }
    await nextMillisecond();
  }
  return { count: next, spanMs: performance.now() - startMs };
}
