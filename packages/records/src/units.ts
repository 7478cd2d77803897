import { create, createUnitDependencies, unitDependencies } from 'mathjs';
import { type Quantity, siUnits } from './quantities.ts';

/** A unit that a column may be in. */
export interface Unit {
  /** code of the unit in UCUM, the Unified Code for Units of Measure */
  readonly ucum: string;
  /** accepted spellings; case matters, since mN and MN differ */
  readonly spellings: readonly string[];
  /** the same unit for mathjs */
  readonly expression: string;
}

/** How a value in a unit becomes one in SI: times `multiply`, or by `divide` where only the divisor is exact. */
export type Scale = { readonly multiply: number } | { readonly divide: number };

const unit = (ucum: string, expression: string, ...spellings: string[]): Unit => ({
  ucum,
  expression,
  spellings: [...new Set([ucum, ...spellings])],
});

/** The accepted units of each quantity. The first spelling is the UCUM code. */
export const units: Readonly<Record<Quantity | 'time', readonly Unit[]>> = {
  time: [
    unit('s', 's', 'sec'),
    unit('ms', 'ms', 'msec'),
    unit('us', 'us', 'µs', 'μs', 'usec'),
    unit('ns', 'ns', 'nsec'),
    unit('min', 'minute'),
  ],
  force: [
    unit('N', 'N'),
    unit('kN', 'kN'),
    unit('mN', 'mN'),
    unit('kgf', 'kgf', 'kp'),
    unit('gf', '1e-3 kgf'),
    unit('[lbf_av]', 'lbf', 'lbf'),
  ],
  'heel-height': [
    unit('m', 'm'),
    unit('cm', 'cm'),
    unit('mm', 'mm'),
    unit('um', 'um', 'µm', 'μm'),
    unit('[in_i]', 'inch', 'in'),
  ],
  acceleration: [
    unit('m/s2', 'm/s^2', 'm/s^2', 'm/s²', 'm/s/s', 'm.s-2', 'm s-2', 'm s^-2'),
    unit('cm/s2', 'cm/s^2', 'cm/s^2', 'cm/s²'),
    unit('mm/s2', 'mm/s^2', 'mm/s^2', 'mm/s²'),
    unit('[g]', 'standardGravity', 'g'),
    unit('m[g]', '1e-3 standardGravity', 'mg'),
  ],
  'angular-velocity': [
    unit('deg/s', 'deg/s', '°/s', 'º/s', 'dps'),
    unit('rad/s', 'rad/s'),
    unit('mdeg/s', '1e-3 deg/s', 'mdps'),
    unit('mrad/s', 'mrad/s'),
  ],
  torque: [
    unit('N.m', 'N m', 'N·m', 'N*m', 'Nm', 'N m'),
    unit('kN.m', 'kN m', 'kN·m', 'kN*m', 'kNm', 'kN m'),
    unit('N.cm', 'N cm', 'N·cm', 'N*cm', 'Ncm', 'N cm'),
    unit('N.mm', 'N mm', 'N·mm', 'N*mm', 'Nmm', 'N mm'),
    unit('kgf.m', 'kgf m', 'kgf·m', 'kgf*m', 'kgf m'),
    unit('[lbf_av].[ft_i]', 'lbf ft', 'lbf.ft', 'lbf·ft', 'lbf*ft', 'lbf ft'),
  ],
  angle: [unit('deg', 'deg', '°', 'º'), unit('rad', 'rad'), unit('mrad', 'mrad')],
  tap: [unit('1', '1')],
};

/** Spellings that are units of something else, with what to say about them. */
const hints: Partial<Record<Quantity, Readonly<Record<string, string>>>> = {
  force: {
    kg: 'kilogram is a unit of mass: write kgf if the device shows the force as a weight',
    g: 'gram is a unit of mass: write gf if the device shows the force as a weight',
    lb: 'pound is a unit of mass: write lbf if the device shows the force as a weight',
    lbs: 'pound is a unit of mass: write lbf if the device shows the force as a weight',
  },
};

/** The unit that a spelling means for a quantity. */
export function findUnit(quantity: Quantity | 'time', spelling: string): Unit | undefined {
  const plain = spelling.trim().replace(/\s+/g, ' ');
  return units[quantity].find((candidate) => candidate.spellings.includes(plain));
}

/** What to say about a refused spelling, where there is more to say than the list of units. */
export function unitHint(quantity: Quantity | 'time', spelling: string): string | undefined {
  const known = quantity === 'time' ? undefined : hints[quantity]?.[spelling.trim()];
  if (known !== undefined) return known;
  const lower = spelling.trim().toLowerCase();
  const close = units[quantity].flatMap(({ spellings }) => spellings.filter((one) => one.toLowerCase() === lower));
  return close.length === 0 ? undefined : `capitals matter: is ${close.join(' or ')} meant?`;
}

/** The accepted units of a quantity, one spelling each. */
export function listUnits(quantity: Quantity | 'time'): string {
  return units[quantity].map(({ ucum, spellings }) => (/\[/.test(ucum) ? spellings[1]! : ucum)).join(', ');
}

const math = create({ unitDependencies: unitDependencies!, createUnitDependencies: createUnitDependencies! });
// CGPM (1901), resolution 2: standard gravity is exactly 9.80665 m/s2.
math.createUnit('standardGravity', '9.80665 m/s^2');

const siExpressions: Readonly<Record<Quantity | 'time', string>> = {
  ...siUnits,
  acceleration: 'm/s^2',
  torque: 'N m',
};

/** How samples of a quantity in this unit become SI. One conversion by mathjs for a whole column. */
export function scaleToSi(quantity: Quantity | 'time', from: Unit): Scale {
  // a count has no unit to convert
  if (quantity === 'tap') return { multiply: 1 };
  const factor = math.unit(from.expression.replace(/^(?![0-9])/, '1 ')).toNumber(siExpressions[quantity]);
  const inverse = Math.round(1 / factor);
  // The quotient of two exactly held numbers is rounded once: 9 mm / 1000 is the double nearest to 0.009 m, while
  // 0.001 is rounded itself, and 9 * 0.001 is the neighbour.
  return factor < 1 && 1 / inverse === factor ? { divide: inverse } : { multiply: factor };
}

/** Samples in SI: these where they are in SI already, or written to an array of their length, by default a new one. */
export function applyScale(samples: Float64Array, scale: Scale, into?: Float64Array): Float64Array {
  if ('multiply' in scale && scale.multiply === 1) return samples;
  const out = into ?? new Float64Array(samples.length);
  if ('divide' in scale) for (let i = 0; i < out.length; i += 1) out[i] = samples[i]! / scale.divide;
  else for (let i = 0; i < out.length; i += 1) out[i] = samples[i]! * scale.multiply;
  return out;
}
