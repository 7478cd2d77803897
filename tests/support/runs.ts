/** Whether the full numbers of random cases were asked for. */
export const isLong = process.env['SURAE_LONG'] === '1';

/** What the ordinary run takes of a number or a list of cases, and what the long run does. */
export const inRun = <Cases>(ordinary: Cases, long: Cases): Cases => (isLong ? long : ordinary);

/** How often fast-check tries: few in the ordinary run, many in the long one; always from the same seed. */
export function runs(short: number, long: number): { seed: number; numRuns: number } {
  return { seed: 20_260_101, numRuns: isLong ? long : short };
}
