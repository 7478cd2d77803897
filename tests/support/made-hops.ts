import type { Trace } from '@surae/analysis';

/** Hops written down by hand: standing, then contacts of half a sine with flights between, then standing. */
export interface MadeHops {
  readonly count: number;
  readonly contactS: number;
  readonly flightS: number;
  readonly massKg: number;
  readonly sampleRateHz: number;
  readonly zeroN?: number;
  readonly standS?: number;
}

/** Vertical force of such hops; each contact has the impulse that carries the weight over its whole hop. */
export function madeForce(hops: MadeHops): { readonly timesS: Float64Array; readonly force: Float64Array } {
  const { count, contactS, flightS, massKg, sampleRateHz, zeroN = 0, standS = 1 } = hops;
  const weightN = massKg * 9.80665;
  const periodS = contactS + flightS;
  const lengthS = 2 * standS + count * flightS + (count - 1) * contactS;
  const samples = Math.round(lengthS * sampleRateHz) + 1;
  const timesS = Float64Array.from({ length: samples }, (_, i) => i / sampleRateHz);
  const force = timesS.map((timeS) => {
    const since = timeS - standS;
    if (since < 0 || since > lengthS - 2 * standS) return weightN + zeroN;
    const place = since % periodS;
    if (place < flightS) return zeroN;
    return (
      zeroN + ((weightN * Math.PI * periodS) / (2 * contactS)) * Math.sin((Math.PI * (place - flightS)) / contactS)
    );
  });
  return { timesS, force };
}

/** The same as a recording of a platform. */
export function madeHopTrace(hops: MadeHops): Trace {
  const { timesS, force } = madeForce(hops);
  return { groups: [{ timesS, channels: [{ quantity: 'force', axis: null, samples: force }] }] };
}
