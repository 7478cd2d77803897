/**
 * Seeded pseudo-random numbers: sfc32 ("small fast counting", 32-bit words), by C. Doty-Humphrey, PractRand. The state is
 * filled from the seed and a stream number and the first outputs are thrown away, as that author recommends. Each concern
 * of a simulation draws from its own stream, so changing one of them leaves the others as they were.
 */
export class Random {
  private a: number;
  private b: number;
  private c: number;
  private counter = 1;
  private spare: number | undefined;

  constructor(seed: number, stream: number) {
    this.a = seed >>> 0;
    this.b = Math.floor(seed / 4294967296) >>> 0;
    this.c = stream >>> 0;
    for (let i = 0; i < 16; i++) this.word();
  }

  /** Next 32-bit word. */
  word(): number {
    const sum = (((this.a + this.b) | 0) + this.counter) | 0;
    this.counter = (this.counter + 1) | 0;
    this.a = this.b ^ (this.b >>> 9);
    this.b = (this.c + (this.c << 3)) | 0;
    this.c = (this.c << 21) | (this.c >>> 11);
    this.c = (this.c + sum) | 0;
    return sum >>> 0;
  }

  /** Uniform in [0, 1) with 53 random bits. */
  uniform(): number {
    const high = this.word() >>> 5;
    const low = this.word() >>> 6;
    return (high * 67108864 + low) / 9007199254740992;
  }

  /** Uniform in [low, high). */
  between(low: number, high: number): number {
    return low + (high - low) * this.uniform();
  }

  /** Log-uniform in [low, high), both above 0. */
  logBetween(low: number, high: number): number {
    return Math.exp(this.between(Math.log(low), Math.log(high)));
  }

  /** Whole number in [low, high], both included. */
  integer(low: number, high: number): number {
    return low + Math.floor(this.uniform() * (high - low + 1));
  }

  /** True with the given probability. */
  chance(probability: number): boolean {
    return this.uniform() < probability;
  }

  /** Normal with mean 0 and standard deviation 1: polar method of Marsaglia and Bray (1964). */
  gaussian(): number {
    if (this.spare !== undefined) {
      const kept = this.spare;
      this.spare = undefined;
      return kept;
    }
    for (;;) {
      const u = 2 * this.uniform() - 1;
      const v = 2 * this.uniform() - 1;
      const square = u * u + v * v;
      if (square > 0 && square < 1) {
        const factor = Math.sqrt((-2 * Math.log(square)) / square);
        this.spare = v * factor;
        return u * factor;
      }
    }
  }

  /** Normal, cut at two and a half standard deviations so that a drawn model stays possible. */
  boundedGaussian(): number {
    for (;;) {
      const value = this.gaussian();
      if (Math.abs(value) <= 2.5) return value;
    }
  }

  /** One of the list, each as likely as its weight. */
  weighted<T>(entries: readonly (readonly [T, number])[]): T {
    let total = 0;
    for (const [, weight] of entries) total += weight;
    let left = this.uniform() * total;
    for (const [value, weight] of entries) {
      left -= weight;
      if (left < 0) return value;
    }
    return entries[entries.length - 1][0];
  }
}
