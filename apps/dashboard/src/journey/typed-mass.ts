const kilogramsPerPound = 0.45359237;

/** A mass without one before it from which it is asked whether it is in pounds [kg]; ours. */
const askedFromKg = 140;

/** The mass of somebody as it was typed, read as pounds [kg]. */
export function poundsInKilograms(pounds: number): number {
  return Math.round(pounds * kilogramsPerPound * 10) / 10;
}

/** Whether a mass that was typed as kilograms may be pounds: read so it is nearer to the one before, or it is large. */
export function looksLikePounds(massKg: number, beforeKg: number | null): boolean {
  if (beforeKg === null) return massKg >= askedFromKg;
  return Math.abs(massKg * kilogramsPerPound - beforeKg) < Math.abs(massKg - beforeKg);
}
