import { ExchangeError } from '../errors.ts';
import { CodeReader, CodeWriter } from './code-bytes.ts';
import { dayOf, daysOf } from './code-day.ts';
import { type HandoutLine, readLine, wordsHome, writeLine } from './plan-code.ts';
import { openedCode, sealedCode } from './sealed-code.ts';
import { type HandoutWeeks, readWeeks, writeWeeks } from './weeks-code.ts';

const asked = ['left', 'right', 'both'] as const;
const told = ['did', 'at-least', 'pain', 'ended-early', 'probe', 'reason-unknown', 'none', 'reached'] as const;
const forceUnits = ['N', 'N.m'] as const;
const stiff = ['none', 'under-10', '10-to-30', 'over-30'] as const;

/** How stiff a morning was. */
export type Stiffness = (typeof stiff)[number];

/** What one leg did in its heel raises, or what it reached in its pushes, to a tenth. */
export interface HandoutLeg {
  readonly told: (typeof told)[number];
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** What both legs reached in pushes. */
export interface HandoutPushes {
  readonly unit: (typeof forceUnits)[number];
  /** digits behind the point that are shown, 0 or 1 */
  readonly decimals: number;
  readonly left: HandoutLeg | null;
  readonly right: HandoutLeg | null;
}

/** What somebody takes home from a visit. It knows no name, no day of birth and no id. */
export interface Handout {
  /** of the visit, by the calendar of the place */
  readonly day: string;
  /** whose mornings are asked about */
  readonly asked: (typeof asked)[number];
  /** pain and stiffness that was usual at the visit, 0 to 10; null was not asked */
  readonly usual: { readonly left: number | null; readonly right: number | null; readonly stiffness: Stiffness | null };
  readonly contact: { readonly name: string; readonly telephone: string } | null;
  /** codes of the sentences that a clinician confirmed for the mornings */
  readonly lines: readonly string[];
  readonly legs: { readonly left: HandoutLeg | null; readonly right: HandoutLeg | null };
  /** what a clinician confirmed, in its order */
  readonly plan: readonly HandoutLine[];
  /** by which what is done at home names the plan; 0 where there is none, and in codes of version 1 */
  readonly planKey: number;
  /** by which plans of one person are known as such in a calendar; no id follows from it; 0 in codes before version 3 */
  readonly series: number;
  /** null where nobody pushed, and in codes before version 4 */
  readonly pushes: HandoutPushes | null;
  /** each leg of each test over the weeks; null in codes before version 4, which do not tell */
  readonly weeks: readonly HandoutWeeks[] | null;
}

/** One morning: pain at the first steps of each leg that was asked about, and stiffness. */
export interface Morning {
  /** by the calendar of the place where it was told */
  readonly day: string;
  readonly left: number | null;
  readonly right: number | null;
  readonly stiffness: Stiffness;
}

const KINDS = { handout: 1, mornings: 2, diary: 3 } as const;
type Kind = keyof typeof KINDS;
/** newest version of each kind that this software writes and reads */
const VERSIONS: Readonly<Record<Kind, number>> = { handout: 4, mornings: 1, diary: 2 };

/** A code of a kind, begun with its kind and version. */
export function begunCode(kind: Kind): CodeWriter {
  return new CodeWriter().number(KINDS[kind]).number(VERSIONS[kind]);
}

/** A code of one of these kinds, opened behind its version. */
export function openedCodeOf(
  text: string,
  kinds: readonly Kind[],
): { readonly reader: CodeReader; readonly kind: Kind; readonly version: number } {
  const reader = new CodeReader(openedCode(text));
  const found = reader.number();
  const kind = kinds.find((one) => KINDS[one] === found);
  if (kind === undefined) {
    throw new ExchangeError('bad-file', { file: 'code', expected: kinds.join(' or '), actual: `kind ${found}` });
  }
  const version = reader.number();
  if (version < 1 || version > VERSIONS[kind]) {
    throw new ExchangeError('newer-version', {
      file: 'code',
      expected: `version ${VERSIONS[kind]}`,
      actual: `${version}`,
    });
  }
  return { reader, kind, version };
}

/** A line of a code of version 1: words, and for which leg. */
function firstLine(reader: CodeReader, day: string): HandoutLine {
  const side = reader.oneOf(asked);
  return wordsHome(reader.text(), side, day);
}

function writeLeg(writer: CodeWriter, leg: HandoutLeg | null): void {
  writer.maybe(leg === null ? null : told.indexOf(leg.told));
  if (leg !== null) writer.number(leg.value).number(leg.low).number(leg.high);
}

function readLeg(reader: CodeReader): HandoutLeg | null {
  const place = reader.maybe();
  if (place === null) return null;
  const word = told[place];
  if (word === undefined) throw new ExchangeError('bad-file', { file: 'code', expected: 'an end', actual: `${place}` });
  return { told: word, value: reader.number(), low: reader.number(), high: reader.number() };
}

function writePushes(writer: CodeWriter, pushes: HandoutPushes | null): void {
  writer.maybe(pushes === null ? null : forceUnits.indexOf(pushes.unit));
  const inTenths = (leg: HandoutLeg | null): HandoutLeg | null => {
    const whole = (value: number): number => Math.round(10 * value);
    return leg === null ? null : { ...leg, value: whole(leg.value), low: whole(leg.low), high: whole(leg.high) };
  };
  if (pushes === null) return;
  writer.number(pushes.decimals);
  writeLeg(writer, inTenths(pushes.left));
  writeLeg(writer, inTenths(pushes.right));
}

function readPushes(reader: CodeReader): HandoutPushes | null {
  const place = reader.maybe();
  if (place === null) return null;
  const unit = forceUnits[place];
  if (unit === undefined)
    throw new ExchangeError('bad-file', { file: 'code', expected: 'a unit of force', actual: `${place}` });
  const ofTenths = (leg: HandoutLeg | null): HandoutLeg | null =>
    leg === null ? null : { ...leg, value: leg.value / 10, low: leg.low / 10, high: leg.high / 10 };
  const decimals = Math.min(1, reader.number());
  return { unit, decimals, left: ofTenths(readLeg(reader)), right: ofTenths(readLeg(reader)) };
}

function readStiffness(place: number | null): Stiffness | null {
  if (place === null) return null;
  const word = stiff[place];
  if (word === undefined)
    throw new ExchangeError('bad-file', { file: 'code', expected: 'stiffness', actual: `${place}` });
  return word;
}

/**
 * What somebody takes home as a text that fits into an address or a code for a camera.
 *
 * Bytes, then two bytes of a check, as base64url. The bytes: kind 1, version 4, day since 1 January 2020, legs asked about (0
 * left, 1 right, 2 both), usual pain left and right and usual stiffness, 1 and name and telephone or 0, codes of sentences, left
 * leg, right leg (end, value, bounds), key of the plan, plan (see `writeLine`; version 1: leg and words of each line, and no key), number of the series (from version 3 on),
 * pushes (unit, digits, left leg, right leg, in tenths) and weeks (see `writeWeeks`; both from version 4 on). A number takes seven bits a byte, the lowest first; a text is its length and UTF-8;
 * what may be missing is one more than it is, or 0; a list is its length and its items.
 *
 * @param handout - whole numbers from 0, a day from 2020 on [-]
 * @returns letters, digits, - and _ [-]
 * Source: ours; check: CRC-16 with polynomial 0x1021 from 0xffff; letters: RFC 4648, section 5
 */
export function handoutCode(handout: Handout): string {
  const { day, usual, contact, lines, legs, plan, planKey, series, pushes, weeks } = handout;
  const writer = begunCode('handout').number(daysOf(day)).number(asked.indexOf(handout.asked));
  writer.maybe(usual.left).maybe(usual.right);
  writer.maybe(usual.stiffness === null ? null : stiff.indexOf(usual.stiffness));
  writer.number(contact === null ? 0 : 1);
  if (contact !== null) writer.text(contact.name).text(contact.telephone);
  writer.list(lines, (line) => writer.text(line));
  writeLeg(writer, legs.left);
  writeLeg(writer, legs.right);
  writer
    .number(planKey)
    .list(plan, (line) => writeLine(writer, line))
    .number(series);
  writePushes(writer, pushes);
  writer.list(weeks ?? [], (one) => writeWeeks(writer, one));
  return sealedCode(writer.written());
}

/**
 * What such a text holds.
 *
 * @throws {@link ExchangeError} `bad-file` for a damaged or another text; `newer-version` for one that this software cannot read
 */
export function handoutOfCode(text: string): Handout {
  const { reader, version } = openedCodeOf(text, ['handout']);
  const day = dayOf(reader.number());
  const legsAsked = reader.oneOf(asked);
  const usual = { left: reader.maybe(), right: reader.maybe(), stiffness: readStiffness(reader.maybe()) };
  const contact = reader.number() === 0 ? null : { name: reader.text(), telephone: reader.text() };
  const lines = reader.list(() => reader.text());
  const legs = { left: readLeg(reader), right: readLeg(reader) };
  const planKey = version === 1 ? 0 : reader.number();
  const plan = reader.list(() => (version === 1 ? firstLine(reader, day) : readLine(reader)));
  const series = version < 3 ? 0 : reader.number();
  const pushes = version < 4 ? null : readPushes(reader);
  const weeks = version < 4 ? null : reader.list(() => readWeeks(reader));
  reader.end();
  return { day, asked: legsAsked, usual, contact, lines, legs, plan, planKey, series, pushes, weeks };
}

/** Writes one morning: day, pain left and right, stiffness. */
export function writeMorning(writer: CodeWriter, { day, left, right, stiffness }: Morning): void {
  writer.number(daysOf(day)).maybe(left).maybe(right).number(stiff.indexOf(stiffness));
}

/** Reads one; a pain beyond 10 is refused. */
export function readMorning(reader: CodeReader): Morning {
  const day = dayOf(reader.number());
  const [left, right] = [reader.maybe(), reader.maybe()];
  const most = Math.max(left ?? 0, right ?? 0);
  if (most > 10) throw new ExchangeError('bad-file', { file: 'code', expected: 'pain of 0 to 10', actual: `${most}` });
  return { day, left, right, stiffness: reader.oneOf(stiff) };
}

/** Mornings as a text, in the way of {@link handoutCode}: kind 2, version 1, each a day, pain left and right, stiffness. */
export function morningsCode(mornings: readonly Morning[]): string {
  const writer = begunCode('mornings');
  writer.list(mornings, (one) => writeMorning(writer, one));
  return sealedCode(writer.written());
}

/**
 * The mornings that such a text holds.
 *
 * @throws {@link ExchangeError} `bad-file` for a damaged or another text, or pain beyond 10; `newer-version` as above
 */
export function morningsOfCode(text: string): Morning[] {
  const { reader } = openedCodeOf(text, ['mornings']);
  const mornings = reader.list(() => readMorning(reader));
  reader.end();
  return mornings;
}
