/** From this age on people are one group: 45 CFR 164.514(b)(2), the list of what is taken out (from memory). */
const OLDEST = 90;

/** An age as it may leave: whole years, or the group of the oldest. */
export function ageLeaving(ageYears: number | null): { ageYears: number | null; ageGroup: '90-and-over' | null } {
  if (ageYears === null) return { ageYears: null, ageGroup: null };
  if (ageYears >= OLDEST) return { ageYears: null, ageGroup: '90-and-over' };
  return { ageYears: Math.floor(ageYears), ageGroup: null };
}

/** Age that is reached in the year of a written time, from the year of birth; null where either is not known [a]. */
export function ageIn(birthYear: number | null, iso: string | null): number | null {
  if (birthYear === null || iso === null) return null;
  const age = Number(iso.slice(0, 4)) - birthYear;
  return Number.isFinite(age) && age >= 0 ? age : null;
}
