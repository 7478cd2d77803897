import type { DescriptionEntry } from '@surae/casebook';
import { type Problem, readSensorDescription, type SensorDocument } from '@surae/sensors';
import { DESCRIBE_WORDS } from '@surae/shared';
import type { KeptDescription } from '../devices/sensor-kind.ts';
import { fill } from '../words/fill.ts';

/** One line that says where a description cannot be used, what was expected there and what came. */
export function faultWords({ path, expected, actual }: Problem): string {
  return path === ''
    ? fill(DESCRIBE_WORDS['fault-whole'], { expected, actual })
    : fill(DESCRIBE_WORDS['fault-at'], { place: path, expected, actual });
}

/** The descriptions of a book that can be used by this version, the newest last. */
export function usableDescriptions(entries: readonly DescriptionEntry[]): KeptDescription[] {
  return entries.flatMap(({ id, json, isOver }) => {
    if (isOver) return [];
    const answer = readSensorDescription(JSON.stringify(json));
    return answer.kind === 'described' ? [{ id, sensor: answer.sensor }] : [];
  });
}

/** The description in a text, or the lines that say why it cannot be used. */
export function describedOrFaults(
  text: string,
): { readonly sensor: SensorDocument } | { readonly faults: readonly string[] } {
  const answer = readSensorDescription(text);
  return answer.kind === 'described' ? { sensor: answer.sensor } : { faults: answer.problems.map(faultWords) };
}
