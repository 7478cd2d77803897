import type { SensorQuantity } from '../quantity.ts';

/** What a number of a sensor may measure, the time of its clock included. */
export type Measured = SensorQuantity | 'time';

/** How a number in a unit becomes one in SI: times a number, or by a divisor where only the divisor is exact. */
export type Factor = { readonly times: number } | { readonly by: number };

interface SensorUnit {
  readonly ucum: string;
  readonly factor: Factor;
  /** other spellings in the header of a line protocol; case matters */
  readonly spellings: readonly string[];
}

const unit = (ucum: string, factor: Factor, ...spellings: string[]): SensorUnit => ({ ucum, factor, spellings });

/** CGPM (1901), resolution 2: exactly so many m/s2. */
const standardGravity = 9.80665;
/** Pound, 0.45359237 kg, and inch, 0.0254 m, exactly: international yard and pound agreement (1959). */
const poundKg = 0.45359237;

/** The units that a sensor may send, the SI unit first. Other software lists more; a sensor sends one of these. */
export const sensorUnits: Readonly<Record<Measured, readonly SensorUnit[]>> = {
  time: [
    unit('s', { times: 1 }),
    unit('ms', { by: 1000 }),
    unit('us', { by: 1e6 }, 'µs', 'μs'),
    unit('ns', { by: 1e9 }),
  ],
  force: [
    unit('N', { times: 1 }),
    unit('kN', { times: 1000 }),
    unit('mN', { by: 1000 }),
    unit('kgf', { times: standardGravity }),
    unit('gf', { times: standardGravity / 1000 }),
    unit('[lbf_av]', { times: poundKg * standardGravity }, 'lbf'),
  ],
  'heel-height': [
    unit('m', { times: 1 }),
    unit('cm', { by: 100 }),
    unit('mm', { by: 1000 }),
    unit('um', { by: 1e6 }, 'µm', 'μm'),
    unit('[in_i]', { times: 0.0254 }, 'in'),
  ],
  acceleration: [
    unit('m/s2', { times: 1 }, 'm/s^2', 'm/s²'),
    unit('mm/s2', { by: 1000 }, 'mm/s^2', 'mm/s²'),
    unit('[g]', { times: standardGravity }, 'g'),
    unit('m[g]', { times: standardGravity / 1000 }, 'mg'),
  ],
  'angular-velocity': [
    unit('rad/s', { times: 1 }),
    unit('mrad/s', { by: 1000 }),
    unit('deg/s', { times: Math.PI / 180 }, '°/s', 'dps'),
    unit('mdeg/s', { times: Math.PI / 180_000 }, 'mdps'),
  ],
  torque: [
    unit('N.m', { times: 1 }, 'N m', 'Nm', 'N·m'),
    unit('N.cm', { by: 100 }, 'N cm', 'Ncm', 'N·cm'),
    unit('N.mm', { by: 1000 }, 'N mm', 'Nmm', 'N·mm'),
  ],
  angle: [unit('rad', { times: 1 }), unit('mrad', { by: 1000 }), unit('deg', { times: Math.PI / 180 }, '°')],
};

/** The UCUM code that a spelling means for a quantity. */
export function ucumOf(measured: Measured, spelling: string): string | undefined {
  return sensorUnits[measured].find(({ ucum, spellings }) => ucum === spelling || spellings.includes(spelling))?.ucum;
}

/** The UCUM code of the SI unit of a quantity. */
export function siUnitOf(measured: Measured): string {
  return sensorUnits[measured][0]!.ucum;
}

/** How numbers in a unit (UCUM code) become SI; `undefined` when a quantity has no such unit. */
export function factorToSi(measured: Measured, ucum: string): Factor | undefined {
  return sensorUnits[measured].find((one) => one.ucum === ucum)?.factor;
}

/** A scale as a factor: 0.001 as a divisor of 1000, whose quotient is rounded once. */
export function factorOf(scale: number): Factor {
  const divisor = Math.round(1 / scale);
  return Math.abs(scale) < 1 && 1 / divisor === scale ? { by: divisor } : { times: scale };
}

/** A number by a factor. */
export function applyFactor(value: number, factor: Factor): number {
  return 'by' in factor ? value / factor.by : value * factor.times;
}

/** A number by the inverse of a factor. */
export function undoFactor(value: number, factor: Factor): number {
  return 'by' in factor ? value * factor.by : value / factor.times;
}
