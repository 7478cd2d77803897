let inUse = 'en-GB';

/** Sets by which locale numbers and days are written from now on. */
export function setLocale(locale: string): void {
  inUse = locale;
}

/** The locale by which numbers and days are written. */
export function localeInUse(): string {
  return inUse;
}
