import type { BitOrder } from './bits.ts';
import { codePattern, formParts, integerRange } from './form.ts';
import type { ChannelField, PacketField, PacketLayout, SamplesField, SkipField } from './layout.ts';
import type { Problem } from './packet-error.ts';
import { factorToSi, sensorUnits } from './units.ts';

type AnyField = PacketField | ChannelField;
type Report = (path: string, expected: string, actual: string) => void;

/** A packet longer than the longest value of an attribute is none: 512 bytes. Source: Bluetooth Core 5.4, vol. 3, part F, 3.2.9. */
const longestBytes = 512;

/** Everything that keeps a layout from being used; an empty list when nothing does. */
export function checkLayout(layout: PacketLayout): Problem[] {
  const problems: Problem[] = [];
  const report: Report = (path, expected, actual) => problems.push({ path, expected, actual });
  checkKinds(layout.fields, report);
  for (const [index, field] of layout.fields.entries()) {
    const path = `fields[${index}]`;
    if (field.kind === 'samples') checkSamples(field, path, report);
    else checkField(field, path, report);
  }
  if (problems.length === 0) checkOrders(layout, report);
  return problems;
}

/** One list of samples, one counter, one clock and one count at most, and the count before the samples that need it. */
function checkKinds(fields: readonly PacketField[], report: Report): void {
  const samplesAt = fields.findIndex(({ kind }) => kind === 'samples');
  if (samplesAt < 0) return report('fields', 'one field of kind samples', 'none');
  for (const kind of ['samples', 'counter', 'time', 'count'] as const) {
    const places = fields.flatMap((field, index) => (field.kind === kind ? [index] : []));
    if (places.length > 1) report(`fields[${places[1]}]`, `one field of kind ${kind}`, `${places.length}`);
  }
  const samples = fields[samplesAt] as SamplesField;
  const countAt = fields.findIndex(({ kind }) => kind === 'count');
  const needed = samples.repeat === 'count';
  if (needed && countAt < 0) report(`fields[${samplesAt}].repeat`, 'a field of kind count before the samples', 'none');
  if (needed && countAt > samplesAt)
    report(`fields[${countAt}]`, 'the count before the samples', 'it comes after them');
  if (!needed && countAt >= 0)
    report(`fields[${samplesAt}].repeat`, '"count", as there is a count', show(samples.repeat));
}

function checkField(field: AnyField | SkipField, path: string, report: Report): void {
  if (field.kind === 'samples') return;
  if (field.kind === 'skip') return checkWhole(field.bits, 1, 8 * longestBytes, `${path}.bits`, 'bits', report);
  const form = formParts(field.form);
  if (form === undefined) return report(`${path}.form`, 'u1 to u53, i2 to i53, f16, f32 or f64', show(field.form));
  if (field.kind === 'counter' || field.kind === 'count') {
    if (form.kind !== 'unsigned') report(`${path}.form`, 'a form without sign, such as u16', field.form);
  } else if (field.kind === 'constant') {
    const { least, greatest } = integerRange(form);
    const fits =
      form.kind !== 'float' && Number.isInteger(field.value) && field.value >= least && field.value <= greatest;
    if (!fits) report(`${path}.value`, `an integer that ${field.form} holds`, show(field.value));
  } else if (field.kind === 'time') {
    if (form.kind === 'signed') report(`${path}.form`, 'a form without sign, or a float', field.form);
    if (factorToSi('time', field.unit) === undefined) report(`${path}.unit`, listed('time'), show(field.unit));
    const { scale = 1 } = field;
    if (!(scale > 0 && Number.isFinite(scale))) report(`${path}.scale`, 'a number above 0', show(scale));
  }
}

function checkSamples(field: SamplesField, path: string, report: Report): void {
  if (typeof field.repeat === 'number')
    checkWhole(field.repeat, 1, 8 * longestBytes, `${path}.repeat`, 'samples', report);
  const channels = field.values.filter((value) => value.kind === 'channel');
  if (channels.length === 0) report(`${path}.values`, 'at least one channel', 'none');
  const seen = new Set<string>();
  for (const [index, value] of field.values.entries()) {
    const at = `${path}.values[${index}]`;
    checkField(value, at, report);
    if (value.kind === 'channel') {
      checkChannel(value, at, report);
      const name = `${value.quantity} ${value.axis ?? ''}`.trim();
      if (seen.has(name)) report(at, 'each quantity and axis once', `${name} again`);
      seen.add(name);
    }
  }
  const setBits = field.values.reduce((sum, value) => sum + bitsOf(value), 0);
  if (field.repeat === 'fill' && setBits < 8)
    report(`${path}.values`, 'samples of 8 bits or more, to be told from padding', `${setBits} bits`);
}

function checkChannel(field: ChannelField, path: string, report: Report): void {
  const { scale = 1, offset = 0, notKnown = [] } = field;
  if (field.quantity in sensorUnits && factorToSi(field.quantity, field.unit) === undefined) {
    report(`${path}.unit`, listed(field.quantity), show(field.unit));
  }
  if (!Number.isFinite(scale) || scale === 0) report(`${path}.scale`, 'a finite number other than 0', show(scale));
  if (!Number.isFinite(offset)) report(`${path}.offset`, 'a finite number', show(offset));
  const form = formParts(field.form);
  for (const [index, code] of notKnown.entries()) {
    const at = `${path}.notKnown[${index}]`;
    if (form?.kind === 'float') report(at, 'no code: a float says NaN', code);
    else if (!codePattern.test(code)) report(at, 'hexadecimal such as 0x7FFF', show(code));
    else if (form !== undefined && Number(code) >= 2 ** form.bits) report(at, `a code that ${field.form} holds`, code);
  }
}

/** Where the order of bits turns round, a byte begins. */
function checkOrders(layout: PacketLayout, report: Report): void {
  let atBit = 0;
  let before: BitOrder | undefined;
  let mixed = false;
  const step = (field: AnyField | SkipField, path: string): void => {
    if (field.kind !== 'skip' && field.kind !== 'samples') {
      const order = field.order ?? layout.order;
      if (before !== undefined && order !== before) {
        mixed = true;
        if (atBit % 8 !== 0)
          report(`${path}.order`, `${before}, or the start of a byte`, `${order} at bit ${atBit % 8}`);
      }
      before = order;
    }
    atBit += bitsOf(field);
  };
  for (const [index, field] of layout.fields.entries()) {
    if (field.kind !== 'samples') step(field, `fields[${index}]`);
    else for (const [i, value] of field.values.entries()) step(value, `fields[${index}].values[${i}]`);
  }
  const samplesAt = layout.fields.findIndex(({ kind }) => kind === 'samples');
  const { arrangement, values } = layout.fields[samplesAt] as SamplesField;
  const pieces =
    arrangement === 'by-channel' ? values.map(bitsOf) : [values.reduce((sum, value) => sum + bitsOf(value), 0)];
  const odd = pieces.find((bits) => bits % 8 !== 0);
  if (mixed && odd !== undefined)
    report(`fields[${samplesAt}].values`, 'whole bytes, as both orders are used', `${odd} bits`);
}

/** How many bits a field takes; the samples are counted by themselves. */
export function bitsOf(field: AnyField | SkipField): number {
  if (field.kind === 'samples') return 0;
  return field.kind === 'skip' ? field.bits : (formParts(field.form)?.bits ?? 0);
}

function checkWhole(value: number, least: number, most: number, path: string, what: string, report: Report): void {
  if (Number.isInteger(value) && value >= least && value <= most) return;
  report(path, `${least} to ${most} ${what}`, show(value));
}

const listed = (measured: keyof typeof sensorUnits): string => sensorUnits[measured].map(({ ucum }) => ucum).join(', ');
const show = (value: unknown): string => (typeof value === 'string' ? JSON.stringify(value) : String(value));
