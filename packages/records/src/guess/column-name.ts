import type { Axis, Placement, Quantity, Side } from '../quantities.ts';
import { findUnit, type Unit } from '../units.ts';
import {
  AXIS_WORDS,
  GENERIC_WORDS,
  IDENTITY_WORDS,
  OTHER_WORDS,
  PLACEMENT_WORDS,
  QUANTITY_WORDS,
  SAMPLE_WORDS,
  SIDE_WORDS,
  TIME_WORDS,
} from './column-words.ts';

/** What a unit in a name may be of. */
export interface NamedUnit {
  readonly spelling: string;
  /** each quantity that has such a unit; a mass stands for the force that a scale shows */
  readonly meanings: readonly { readonly quantity: Quantity | 'time'; readonly unit: Unit; readonly asMass: boolean }[];
}

/** What the name of a column says. */
export interface NameReading {
  readonly unit: NamedUnit | undefined;
  readonly isTime: boolean;
  readonly isSampleNumber: boolean;
  readonly quantities: readonly Quantity[];
  /** the word by which the quantity is known; undefined without one */
  readonly word: string | undefined;
  readonly axis: Axis;
  readonly sides: readonly Side[];
  readonly placements: readonly Placement[];
  readonly isIdentity: boolean;
  /** a known word for something that is not used here, such as a temperature */
  readonly isOther: boolean;
  /** a name that says nothing, such as "Channel 3" */
  readonly isGeneric: boolean;
}

const massUnits: Readonly<Record<string, string>> = { kg: 'kgf', g: 'gf', lb: 'lbf', lbs: 'lbf' };
const otherSpellings: readonly (readonly [RegExp, string])[] = [
  [/^(?:seconds?|secs?|sekunden?|segundos?|secondes?|secondi)$/i, 's'],
  [/^(?:milliseconds?|millisekunden?|milisegundos?|msecs?)$/i, 'ms'],
  [/^(?:microseconds?|mikrosekunden?|usecs?)$/i, 'us'],
  [/^(?:minutes?|minuten|minutos)$/i, 'min'],
  [/^(?:newtons?)$/i, 'N'],
  [/^(?:degrees?|grad|grados|degr[eé]s)$/i, 'deg'],
  [/^(?:radians?|radiant)$/i, 'rad'],
  [/^(?:deg|°|grad)(?:\/|p|_per_)(?:s|sec)$/i, 'deg/s'],
  [/^(?:rad)(?:\/|p|_per_)(?:s|sec)$/i, 'rad/s'],
  [/^(?:m\/s\/s|m\/s2|m\/s\^2|m\/s²|m\/sec2|m\/sec\^2|m s-2|mps2|m_s2)$/i, 'm/s2'],
  [/^(?:gs|g's|g0|\[g\])$/i, 'g'],
  [/^(?:newton[- ]?met(?:er|re)s?|n-m|n_m)$/i, 'N.m'],
  [/^(?:millimet(?:er|re)s?)$/i, 'mm'],
  [/^(?:kilograms?|kilos?)$/i, 'kg'],
  [/^(?:pounds?)$/i, 'lb'],
];

const quantitiesOrTime = [
  'time',
  'force',
  'heel-height',
  'acceleration',
  'angular-velocity',
  'torque',
  'angle',
] as const;

/** The unit that a text spells, in brackets or not; undefined where it spells none that is known. */
export function readUnitText(text: string): NamedUnit | undefined {
  const bare = text
    .trim()
    .replace(/^[[({<]\s*(.*?)\s*[\])}>]$/, '$1')
    .trim();
  if (bare === '') return undefined;
  const spelling = otherSpellings.find(([form]) => form.test(bare))?.[1] ?? bare;
  const meanings = quantitiesOrTime.flatMap((quantity) => {
    const unit = findUnit(quantity, spelling);
    return unit === undefined ? [] : [{ quantity, unit, asMass: false }];
  });
  const weight = massUnits[spelling];
  const force = weight === undefined ? undefined : findUnit('force', weight);
  if (force !== undefined) meanings.push({ quantity: 'force', unit: force, asMass: true });
  return meanings.length === 0 ? undefined : { spelling: bare, meanings };
}

/** Units in small letters, as they stand at the end of a name. */
const smallUnits: Readonly<Record<string, string>> = { n: 'N', kn: 'kN', nm: 'Nm' };

/** The part of a name that is no unit, and the unit. */
function parted(name: string): { rest: string; unit: NamedUnit | undefined } {
  const bracket = /^(.*?)\s*[[(]\s*([^\])]*?)\s*[\])]\s*(.*)$/.exec(name);
  if (bracket !== null) {
    const unit = readUnitText(bracket[2]!);
    // what stands in brackets and is no unit may be a side or an axis
    return unit === undefined
      ? { rest: name.replace(/[[\]()]/g, ' '), unit: undefined }
      : { rest: `${bracket[1]} ${bracket[3]}`, unit };
  }
  const after = /^(.+?)(?:\s*[,/]\s+|\s+in\s+|\s+\/\s*)(\S.*)$/.exec(name);
  if (after !== null) {
    const unit = readUnitText(after[2]!);
    if (unit !== undefined) return { rest: after[1]!, unit };
  }
  const last = /^(.+?)(?:[_\s]+)([A-Za-zµ°²/^0-9.]+)$/.exec(name);
  if (last !== null && !/^[xyzXYZlrLR]$/.test(last[2]!)) {
    const spelling = last[2]!;
    const unit =
      readUnitText(spelling) ?? readUnitText(spelling.toLowerCase()) ?? readUnitText(smallUnits[spelling] ?? '');
    // a single letter at the end, as in "leg g", is not enough for a length or a mass
    if (
      unit !== undefined &&
      (!/^(?:m|g|in|min)$/i.test(spelling) || /(?:acc|accel|time|zeit|height|hub)/i.test(last[1]!))
    ) {
      return { rest: last[1]!, unit };
    }
  }
  return { rest: name, unit: undefined };
}

/** The words of a name in small letters without accents: "Kraft_links" and "kraftLinks" have two. */
export function wordsOf(name: string): string[] {
  return name
    .replace(/ß/g, 'ss')
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2')
    .replace(/(\p{L})(\d)/gu, '$1 $2')
    .toLowerCase()
    .split(/[^\p{L}\p{N}#]+/u)
    .filter((word) => word !== '');
}

const joined = new Set([
  'kraft',
  'winkel',
  'moment',
  'hohe',
  'hoehe',
  'beschleunigung',
  'zeit',
  'geschwindigkeit',
  'temperatur',
]);

function found<Value extends string>(
  table: Readonly<Record<Value, readonly string[]>>,
  words: readonly string[],
): Value[] {
  // German joins words: what was measured stands at the end, as in Fusswinkel
  const has = (one: string): boolean =>
    one.includes(' ')
      ? ` ${words.join(' ')} `.includes(` ${one} `)
      : words.some((word) => word === one || (joined.has(one) && word.endsWith(one)));
  return (Object.keys(table) as Value[]).filter((value) => table[value].some(has));
}

/** What the name of a column says, with the unit of a row of units where the name itself has none. */
export function readName(name: string, unitBelow?: string): NameReading {
  const { rest, unit } = parted(name);
  const words = wordsOf(rest);
  const has = (list: readonly string[]): boolean => found({ it: list }, words).length > 0;
  const short = AXIS_WORDS[words.join('')] ?? AXIS_WORDS[words.filter((word) => !isSide(word)).join('')];
  const quantities = new Set<Quantity>(found(QUANTITY_WORDS, words));
  // "heel angle" is an angle and "platform height" no heel: a placement word alone is the weaker one
  if (quantities.size > 1) quantities.delete('heel-height');
  if (quantities.size === 0 && short !== undefined) quantities.add(short.quantity);
  const axis =
    quantities.size > 0
      ? ((/^[xyz]$/.exec(words.at(-1) ?? '')?.[0] as Axis | undefined) ??
        words.map(axisOf).find((one) => one !== null) ??
        short?.axis ??
        null)
      : null;
  const known = (list: readonly string[]): string | undefined => list.find((one) => has([one]));
  return {
    unit: unit ?? (unitBelow === undefined ? undefined : readUnitText(unitBelow)),
    isTime: has(TIME_WORDS) || (words.length === 1 && words[0] === 't'),
    isSampleNumber: has(SAMPLE_WORDS) || (words.length === 1 && ['n', 'i', 'no', 'nr', '#', 'id'].includes(words[0]!)),
    quantities: [...quantities],
    word: [...quantities].map((one) => known(QUANTITY_WORDS[one]) ?? rest.trim())[0],
    axis,
    sides: found(SIDE_WORDS, words),
    placements: found(PLACEMENT_WORDS, words),
    isIdentity: has(IDENTITY_WORDS),
    isOther: has(OTHER_WORDS) && !quantities.has('angular-velocity'),
    isGeneric:
      words.length === 0 ||
      words.every((word) => GENERIC_WORDS.includes(word) || /^\d+$/.test(word) || word.length === 1),
  };
}

/** What the name of a column says below a group: its own words come first, those of the group say what they leave open. */
export function readGroupedName(group: string, name: string, unitBelow?: string): NameReading {
  const own = readName(name, unitBelow);
  const above = readName(group);
  const says = own.isTime || own.isSampleNumber || own.isOther || own.isIdentity || own.quantities.length > 0;
  // "x" below "Acceleration [m/s2]"
  const reading = says ? own : readName(`${group} ${name}`.trim(), unitBelow);
  return {
    ...reading,
    sides: own.sides.length > 0 ? own.sides : above.sides,
    placements: own.placements.length > 0 ? own.placements : above.placements,
    isIdentity: own.isIdentity,
  };
}

function isSide(word: string): boolean {
  return SIDE_WORDS.left.includes(word) || SIDE_WORDS.right.includes(word);
}

function axisOf(word: string): Axis {
  return /^[xyz]$/.test(word) ? (word as Axis) : null;
}
