import type { Quantity } from '../trace.ts';

/** A unit that numbers may be in, and how common it is among sensors. */
export interface KnownUnit {
  /** code of the unit in UCUM */
  readonly ucum: string;
  /** SI units in one of it */
  readonly toSi: number;
  /** share of sensors that give it; ours */
  readonly prior: number;
}

const unit = (ucum: string, toSi: number, prior: number): KnownUnit => ({ ucum, toSi, prior });

const gravity = 9.80665; // CGPM (1901), resolution 2
const pound = 0.45359237 * gravity; // international avoirdupois pound of 1959, exact
const degree = Math.PI / 180;

/** Units that a column of numbers is looked for in. */
export const KNOWN_UNITS: Readonly<Record<Quantity, readonly KnownUnit[]>> = {
  force: [
    unit('N', 1, 0.6),
    unit('kgf', gravity, 0.25),
    unit('[lbf_av]', pound, 0.08),
    unit('kN', 1000, 0.04),
    unit('gf', gravity / 1000, 0.02),
    unit('mN', 0.001, 0.01),
  ],
  'heel-height': [
    unit('mm', 0.001, 0.7),
    unit('cm', 0.01, 0.15),
    unit('m', 1, 0.12),
    unit('[in_i]', 0.0254, 0.02),
    unit('um', 1e-6, 0.01),
  ],
  acceleration: [
    unit('m/s2', 1, 0.5),
    unit('[g]', gravity, 0.4),
    unit('m[g]', gravity / 1000, 0.085),
    unit('cm/s2', 0.01, 0.01),
    unit('mm/s2', 0.001, 0.005),
  ],
  'angular-velocity': [
    unit('deg/s', degree, 0.55),
    unit('rad/s', 1, 0.38),
    unit('mdeg/s', degree / 1000, 0.05),
    unit('mrad/s', 0.001, 0.02),
  ],
  torque: [
    unit('N.m', 1, 0.9),
    unit('N.cm', 0.01, 0.03),
    unit('kgf.m', gravity, 0.03),
    unit('[lbf_av].[ft_i]', pound * 0.3048, 0.03),
    unit('N.mm', 0.001, 0.01),
  ],
  angle: [unit('deg', degree, 0.85), unit('rad', 1, 0.13), unit('mrad', 0.001, 0.02)],
  tap: [unit('1', 1, 1)],
};
