import type { DesignId, InputKey } from '../../packages/study/src/design/design-question.ts';
import {
  type DesignReading,
  type DesignRequest,
  type DesignTold,
  questionFor,
  readDesign,
} from '../../packages/study/src/design/design-request.ts';

type Given = Partial<Record<InputKey, number | readonly number[] | DesignTold>>;

/** What is told of inputs: a number, three of them, or a number with the people it was found in. */
export function toldOf(given: Given): Map<InputKey, DesignTold> {
  return new Map(
    Object.entries(given).map(([key, value]) => [
      key as InputKey,
      typeof value === 'number'
        ? { numbers: [value], people: null }
        : 'numbers' in value
          ? value
          : { numbers: value, people: null },
    ]),
  );
}

/** A question with what was told, read. */
export function reading(id: DesignId, given: Given): DesignReading {
  const told = toldOf(given);
  return readDesign(questionFor(id, told.keys()), told);
}

/** A question that can be answered. */
export function requestOf(id: DesignId, given: Given): DesignRequest {
  const read = reading(id, given);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.request;
}
