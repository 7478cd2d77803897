import { requireRange } from '../check.ts';
import type { Figure } from './figure.ts';
import type { PullUnit } from './pull-signal.ts';

/** What was measured of the person and the rig; what is missing was not measured. */
export interface ForceContext {
  /** body mass, with its standard uncertainty [kg] */
  readonly bodyMassKg?: Figure;
  /** distance from the ankle axis to the line of the force, with its standard uncertainty [m] */
  readonly leverM?: Figure;
}

/** A force or torque in other units; null where what it needs was not measured. */
export interface DerivedForce {
  readonly newton: Figure | null;
  readonly newtonMetre: Figure | null;
  readonly newtonPerKg: Figure | null;
  readonly newtonMetrePerKg: Figure | null;
  /** in multiples of body weight [-] */
  readonly timesBodyWeight: Figure | null;
}

function combined(first: Figure, second: Figure, value: number): Figure {
  return { value, u: Math.abs(value) * Math.hypot(first.u / first.value, second.u / second.value) };
}

function product(first: Figure, second: Figure): Figure {
  if (first.value === 0) return { value: 0, u: first.u * second.value };
  return combined(first, second, first.value * second.value);
}

function ratio(first: Figure, second: Figure): Figure {
  if (first.value === 0) return { value: 0, u: first.u / second.value };
  return combined(first, second, first.value / second.value);
}

/**
 * A net force in the units that what was measured allows: a torque needs a measured lever, figures per kilogram and in body
 * weights a known mass. A torque never becomes a force.
 *
 * @param figure - net force or torque [N or N.m]
 * @param unit - its unit [-]
 * @param context - mass and lever, as far as measured; each above 0 [kg, m]
 * @param gravityMps2 - acceleration of gravity, > 0 [m/s2]
 * @returns the figure in each unit, null where it cannot be given [N, N.m, N/kg, N.m/kg, body weights]
 * @throws {@link InputError} `out-of-range` when mass or lever is not above 0
 *
 * Source: definition; first-order propagation of uncertainty, JCGM 100:2008, 5.1.2
 */
export function derivedForce(figure: Figure, unit: PullUnit, context: ForceContext, gravityMps2: number): DerivedForce {
  const { bodyMassKg, leverM } = context;
  if (bodyMassKg !== undefined) requireRange(bodyMassKg.value, bodyMassKg.value > 0, 'bodyMassKg', '> 0');
  if (leverM !== undefined) requireRange(leverM.value, leverM.value > 0, 'leverM', '> 0');
  const newton = unit === 'N' ? figure : null;
  const newtonMetre = unit === 'N.m' ? figure : leverM === undefined ? null : product(figure, leverM);
  const perKg = (one: Figure | null): Figure | null =>
    one === null || bodyMassKg === undefined ? null : ratio(one, bodyMassKg);
  const newtonPerKg = perKg(newton);
  return {
    newton,
    newtonMetre,
    newtonPerKg,
    newtonMetrePerKg: perKg(newtonMetre),
    timesBodyWeight:
      newtonPerKg === null ? null : { value: newtonPerKg.value / gravityMps2, u: newtonPerKg.u / gravityMps2 },
  };
}
