import {
  DESIGN_QUESTIONS,
  type DesignFaultCode,
  type DesignId,
  type DesignInput,
  type DesignQuestion,
  type DesignReading,
  type DesignTold,
  type InputKey,
  readDesign,
} from '@surae/study';

/** What was typed of one input, as it stands in its fields. */
export interface TypedInput {
  readonly low: string;
  readonly expected: string;
  readonly high: string;
  readonly people: string;
}

/** A question with what was typed so far, of any question: what two of them ask alike is typed once. */
export interface DesignFields {
  readonly id: DesignId;
  readonly way: DesignQuestion['way'];
  readonly typed: ReadonlyMap<InputKey, TypedInput>;
}

export const nothingTyped: TypedInput = { low: '', expected: '', high: '', people: '' };

export const firstFields: DesignFields = { id: 'groups', way: '', typed: new Map() };

/** The names of the questions, each once, in their order. */
export const designIds: readonly DesignId[] = [...new Set(DESIGN_QUESTIONS.map(({ id }) => id))];

/** The ways to ask a question, the usual one first. */
export function waysOf(id: DesignId): readonly DesignQuestion[] {
  return DESIGN_QUESTIONS.filter((one) => one.id === id);
}

/** The question that is asked. */
export function askedQuestion({ id, way }: DesignFields): DesignQuestion {
  const ways = waysOf(id);
  return ways.find((one) => one.way === way) ?? ways[0]!;
}

/** Whether an input stands among those that have to be told; the others have a usual value and are folded away. */
export function isMain({ key, usual }: DesignInput): boolean {
  return usual === null || key === 'difference' || key === 'repeats';
}

/** Fields with another text in one of them. */
export function withTyped(fields: DesignFields, key: InputKey, part: keyof TypedInput, text: string): DesignFields {
  const typed = new Map(fields.typed);
  typed.set(key, { ...(typed.get(key) ?? nothingTyped), [part]: text });
  return { ...fields, typed };
}

/** A number with a point or a comma and either minus sign; NaN for anything else. */
function numberIn(text: string): number {
  const plain = text.trim().replace('−', '-').replace(',', '.');
  return /^-?\d+(?:\.\d+)?$/.test(plain) ? Number(plain) : Number.NaN;
}

/** What the fields tell of an input; undefined where they are empty. */
function toldIn({ low, expected, high, people }: TypedInput): DesignTold | undefined {
  const isRanged = low.trim() !== '' || high.trim() !== '';
  if (!isRanged && expected.trim() === '') return undefined;
  return {
    numbers: isRanged ? [low, expected, high].map(numberIn) : [numberIn(expected)],
    people: people.trim() === '' ? null : numberIn(people),
  };
}

/** The question as it can be answered, or what of it cannot be. */
export function readFields(fields: DesignFields): DesignReading {
  const question = askedQuestion(fields);
  const told = new Map<InputKey, DesignTold>();
  for (const { key } of question.inputs) {
    const one = toldIn(fields.typed.get(key) ?? nothingTyped);
    if (one !== undefined) told.set(key, one);
  }
  return readDesign(question, told);
}

/** Why each input cannot be, by its key. */
export function faultsOf(reading: DesignReading): ReadonlyMap<InputKey, DesignFaultCode> {
  return new Map(reading.ok ? [] : reading.faults.map(({ input, code }) => [input, code]));
}

const parts = ['low', 'expected', 'high', 'people'] as const;

/** The fields as one text, for the address: what was typed is there again after a reload. */
export function addressOf({ id, way, typed }: DesignFields): string {
  const told = [...typed].flatMap(([key, one]) =>
    parts.flatMap((part) => (one[part].trim() === '' ? [] : [`${key}.${part}=${one[part].trim()}`])),
  );
  return [`${id}.${way}`, ...told].join(';');
}

/** The fields that an address holds; the first ones where it holds none. What no question asks for is passed over. */
export function fieldsAt(address: string): DesignFields {
  const [asked = '', ...told] = address.split(';');
  const [id, way = ''] = asked.split('.');
  const known = waysOf(id as DesignId);
  if (known.length === 0) return firstFields;
  let fields: DesignFields = {
    ...firstFields,
    id: known[0]!.id,
    way: (known.find((one) => one.way === way) ?? known[0]!).way,
  };
  for (const one of told) {
    const found = /^([a-z-]+)\.([a-z]+)=(.*)$/.exec(one);
    const key = DESIGN_QUESTIONS.flatMap(({ inputs }) => inputs).find((input) => input.key === found?.[1])?.key;
    const part = parts.find((name) => name === found?.[2]);
    if (key !== undefined && part !== undefined) fields = withTyped(fields, key, part, found![3]!.slice(0, 40));
  }
  return fields;
}
