import type { Quantity } from './quantities.ts';

/** How a value in a unit becomes one in SI: times `multiply`, or by `divide` where only the divisor is exact. */
export type Scale = { readonly multiply: number } | { readonly divide: number };

/** A unit that a column may be in. */
export interface Unit {
  /** code of the unit in UCUM, the Unified Code for Units of Measure */
  readonly ucum: string;
  /** how samples in it become SI */
  readonly toSi: Scale;
  /** accepted spellings; case matters, since mN and MN differ */
  readonly spellings: readonly string[];
}

const unit = (ucum: string, toSi: Scale, ...spellings: string[]): Unit => ({
  ucum,
  toSi,
  spellings: [...new Set([ucum, ...spellings])],
});

const times = (multiply: number): Scale => ({ multiply });
/**
 * The quotient of two exactly held numbers is rounded once: 9 mm / 1000 is the double nearest to 0.009 m, while 0.001 is rounded itself,
 * and 9 * 0.001 is the neighbour.
 */
const by = (divide: number): Scale => ({ divide });
const asItIs = times(1);

/** Standard gravity, exact [m/s2]. Source: CGPM (1901), resolution 2. */
const gravity = 9.80665;
/** A pound-force: 0.45359237 kg under standard gravity, exact [N]. Source: NIST SP 811 (2008), appendix B.8. */
const pound = 4.4482216152605;
/** A foot and its twelfth, exact [m]. Source: NIST SP 811 (2008), appendix B.8. */
const foot = 0.3048;
const inch = 0.0254;
/** A degree [rad]. Source: definition. */
const degree = Math.PI / 180;

/** The accepted units of each quantity. The first spelling is the UCUM code. */
export const units: Readonly<Record<Quantity | 'time', readonly Unit[]>> = {
  time: [
    unit('s', asItIs, 'sec'),
    unit('ms', by(1e3), 'msec'),
    unit('us', by(1e6), 'µs', 'μs', 'usec'),
    unit('ns', by(1e9), 'nsec'),
    unit('min', times(60)),
  ],
  force: [
    unit('N', asItIs),
    unit('kN', times(1e3)),
    unit('mN', by(1e3)),
    unit('kgf', times(gravity), 'kp'),
    unit('gf', times(gravity / 1e3)),
    unit('[lbf_av]', times(pound), 'lbf'),
  ],
  'heel-height': [
    unit('m', asItIs),
    unit('cm', by(100)),
    unit('mm', by(1e3)),
    unit('um', by(1e6), 'µm', 'μm'),
    unit('[in_i]', times(inch), 'in'),
  ],
  acceleration: [
    unit('m/s2', asItIs, 'm/s^2', 'm/s²', 'm/s/s', 'm.s-2', 'm s-2', 'm s^-2'),
    unit('cm/s2', by(100), 'cm/s^2', 'cm/s²'),
    unit('mm/s2', by(1e3), 'mm/s^2', 'mm/s²'),
    unit('[g]', times(gravity), 'g'),
    unit('m[g]', times(gravity / 1e3), 'mg'),
  ],
  'angular-velocity': [
    unit('deg/s', times(degree), '°/s', 'º/s', 'dps'),
    unit('rad/s', asItIs),
    unit('mdeg/s', times(degree / 1e3), 'mdps'),
    unit('mrad/s', by(1e3)),
  ],
  torque: [
    unit('N.m', asItIs, 'N·m', 'N*m', 'Nm', 'N m'),
    unit('kN.m', times(1e3), 'kN·m', 'kN*m', 'kNm', 'kN m'),
    unit('N.cm', by(100), 'N·cm', 'N*cm', 'Ncm', 'N cm'),
    unit('N.mm', by(1e3), 'N·mm', 'N*mm', 'Nmm', 'N mm'),
    unit('kgf.m', times(gravity), 'kgf·m', 'kgf*m', 'kgf m'),
    unit('[lbf_av].[ft_i]', times(pound * foot), 'lbf.ft', 'lbf·ft', 'lbf*ft', 'lbf ft'),
  ],
  angle: [unit('deg', times(degree), '°', 'º'), unit('rad', asItIs), unit('mrad', by(1e3))],
  // a count has no unit to convert
  tap: [unit('1', asItIs)],
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

/** Samples in SI: these where they are in SI already, or written to an array of their length, by default a new one. */
export function applyScale(samples: Float64Array, scale: Scale, into?: Float64Array): Float64Array {
  if ('multiply' in scale && scale.multiply === 1) return samples;
  const out = into ?? new Float64Array(samples.length);
  if ('divide' in scale) for (let i = 0; i < out.length; i += 1) out[i] = samples[i]! / scale.divide;
  else for (let i = 0; i < out.length; i += 1) out[i] = samples[i]! * scale.multiply;
  return out;
}
