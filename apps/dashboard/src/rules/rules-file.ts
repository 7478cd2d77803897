import type { OwnRuleNumber } from '@surae/casebook';
import { type OwnNumberFault, ownNumberFault } from '@surae/guidance';
import { GUIDANCE_RULES, OWN_NUMBER_WHY, RULES_FILE_WORDS, RULES_WORDS } from '@surae/shared';
import { fill } from '../words/fill.ts';
import type { RuleChange } from './own-rules-desk.ts';

const format = 'surae-own-rules';
const version = 1;
const words = RULES_FILE_WORDS;
/** the longest reason that is kept */
export const reasonMost = 500;

/** A file of changes that is not taken, and why, in a sentence. */
export class RulesFileRefusal extends Error {
  override readonly name = 'RulesFileRefusal';
}

/** The changes of a clinic as one JSON file. */
export function rulesFileText(numbers: readonly OwnRuleNumber[], software: string): string {
  return `${JSON.stringify({ format, version, software, numbers }, null, 2)}\n`;
}

/** What came, as it is told: short, and a list or an object by its kind. */
function told(value: unknown): string {
  if (value === undefined) return words.nothing.text;
  if (Array.isArray(value)) return words.list.text;
  if (typeof value === 'object' && value !== null) return words.object.text;
  const text = JSON.stringify(value);
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
}

class Reader {
  private readonly file: string;

  constructor(file: string) {
    this.file = file;
  }

  refuse(where: string, expected: string, got: string): never {
    throw new RulesFileRefusal(fill(RULES_WORDS['file-refused'], { file: this.file, where, expected, got }));
  }

  object(value: unknown, where: string): Readonly<Record<string, unknown>> {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) {
      this.refuse(where, words.object.text, told(value));
    }
    return value as Readonly<Record<string, unknown>>;
  }

  text(value: unknown, where: string, most = 200): string {
    if (typeof value !== 'string' || value.trim() === '' || value.length > most) {
      this.refuse(where, fill(words.text, { most }), told(value));
    }
    return value;
  }

  number(value: unknown, where: string): number {
    if (typeof value !== 'number' || !Number.isFinite(value)) this.refuse(where, words.number.text, told(value));
    return value;
  }

  change(value: unknown, where: string): RuleChange {
    const one = this.object(value, where);
    const at = (name: string): string => `${where}.${name}`;
    const change = {
      number: this.text(one['number'], at('number')),
      unit: this.text(one['unit'], at('unit')),
      published: this.number(one['published'], at('published')),
      value: this.number(one['value'], at('value')),
      reason: this.text(one['reason'], at('reason'), reasonMost),
    };
    const fault = ownNumberFault(change, GUIDANCE_RULES);
    if (fault !== null) this.refuseFault(fault, at, change);
    return change;
  }

  private refuseFault(fault: OwnNumberFault, at: (name: string) => string, change: RuleChange): never {
    const why = OWN_NUMBER_WHY[fault].text;
    const field = fault === 'other-unit' ? 'unit' : fault === 'other-published' ? 'published' : 'value';
    const where = at(fault === 'unknown-number' ? 'number' : field);
    const got = fault === 'unknown-number' ? change.number : change[field];
    this.refuse(where, fill(words.usable, { why: why.replace(/\.$/, '') }), told(got));
  }
}

/**
 * The changes that a file holds, all of them or none.
 *
 * @param file - name of the file, for refusals
 * @param text - what stands in it
 * @param inUse - numbers that count here already: what is the same is left out
 * @throws {@link RulesFileRefusal} with the file, the place in it, what was expected and what came; or where nothing in it is new
 */
export function changesFromFile(file: string, text: string, inUse: readonly OwnRuleNumber[]): readonly RuleChange[] {
  const read = new Reader(file);
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch (error) {
    read.refuse('$', words.json.text, error instanceof Error ? error.message : told(text));
  }
  const whole = read.object(json, '$');
  if (whole['format'] !== format) read.refuse('$.format', `"${format}"`, told(whole['format']));
  if (whole['version'] !== version) read.refuse('$.version', String(version), told(whole['version']));
  const list = whole['numbers'];
  if (!Array.isArray(list)) read.refuse('$.numbers', words.list.text, told(list));
  const changes = (list as readonly unknown[]).map((one, i) => read.change(one, `$.numbers[${i}]`));
  const twice = changes.findIndex(({ number }, i) => changes.findIndex((one) => one.number === number) !== i);
  if (twice >= 0) read.refuse(`$.numbers[${twice}].number`, words.once.text, told(changes[twice]?.number));
  const fresh = changes.filter(
    ({ number, value, reason }) =>
      !inUse.some((one) => one.number === number && one.value === value && one.reason === reason),
  );
  if (fresh.length === 0) throw new RulesFileRefusal(fill(RULES_WORDS['file-nothing'], { file }));
  return fresh;
}
