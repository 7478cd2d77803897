/** What is told aloud while a rest runs. */
export type RestNews = 'one-minute' | 'half-a-minute' | 'over';

const marks: readonly (readonly [number, RestNews])[] = [
  [60, 'one-minute'],
  [30, 'half-a-minute'],
  [0, 'over'],
];

/** What passing from one remaining time to a later one is to be told, the last mark that was passed [s]. */
export function restNews(leftBeforeS: number, leftNowS: number): RestNews | undefined {
  return marks.filter(([atS]) => leftBeforeS > atS && leftNowS <= atS).at(-1)?.[1];
}

/** A time as minutes and seconds, such as 1:05; below zero it stands at 0:00. */
export function minutesAndSeconds(seconds: number): string {
  const whole = Math.max(0, Math.ceil(seconds));
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}
