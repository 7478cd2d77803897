/**
 * The foot as a rigid lever that turns about the metatarsal heads. Symbols: tilt = elevation of the line from the
 * metatarsal heads to the heel above horizontal, heel up positive; heel lever = length of that line.
 */

/** Ankle axis seen from the metatarsal heads. */
export interface AnkleLever {
  /** distance from the metatarsal heads to the ankle axis [m] */
  readonly lengthM: number;
  /** elevation of that line above the foot line [rad] */
  readonly angleRad: number;
}

/**
 * Height of the heel above its level at rest.
 *
 * @param tiltRad - elevation of the foot line [rad]
 * @param restTiltRad - elevation at rest: 0 on the floor, negative on a board with the toes up [rad]
 * @param heelLeverM - metatarsal heads to heel, > 0 [m]
 * @returns height [m]
 *
 * Source: definition (rigid lever: L (sin tilt - sin rest tilt)).
 */
export function heelHeight(tiltRad: number, restTiltRad: number, heelLeverM: number): number {
  return heelLeverM * (Math.sin(tiltRad) - Math.sin(restTiltRad));
}

/**
 * Tilt that puts the heel at a height: the inverse of {@link heelHeight}, held at a vertical foot.
 *
 * @param heightM - height of the heel above its level at rest [m]
 * @param restTiltRad - elevation of the foot line at rest [rad]
 * @param heelLeverM - metatarsal heads to heel, > 0 [m]
 * @returns tilt, from -pi/2 to pi/2 [rad]
 *
 * Source: definition (rigid lever).
 */
export function tiltOfHeight(heightM: number, restTiltRad: number, heelLeverM: number): number {
  return Math.asin(Math.min(1, Math.max(-1, heightM / heelLeverM + Math.sin(restTiltRad))));
}

/**
 * Standard uncertainty of the height of the heel from those of the tilt and of the lever.
 *
 * @param tiltRad - elevation of the foot line [rad]
 * @param restTiltRad - elevation of the foot line at rest [rad]
 * @param heelLeverM - metatarsal heads to heel, > 0 [m]
 * @param tiltURad - standard uncertainty of the tilt [rad]
 * @param heelLeverUM - standard uncertainty of the lever [m]
 * @returns standard uncertainty of the height [m]
 *
 * Source: JCGM 100:2008 (GUM) clause 5.1.2 applied to the rigid lever.
 */
export function heelHeightU(
  tiltRad: number,
  restTiltRad: number,
  heelLeverM: number,
  tiltURad: number,
  heelLeverUM: number,
): number {
  const fromTilt = heelLeverM * Math.cos(tiltRad) * tiltURad;
  const fromLever = (Math.sin(tiltRad) - Math.sin(restTiltRad)) * heelLeverUM;
  return Math.hypot(fromTilt, fromLever);
}

/**
 * Rise of the ankle axis, which is the rise of the body when everything above the ankle moves as one.
 *
 * @param tiltRad - elevation of the foot line [rad]
 * @param restTiltRad - elevation of the foot line at rest [rad]
 * @param ankle - ankle axis seen from the metatarsal heads [m, rad]
 * @returns rise [m]
 *
 * Source: definition (rigid lever: R (sin(tilt + b) - sin(rest tilt + b))).
 */
export function ankleRise(tiltRad: number, restTiltRad: number, ankle: AnkleLever): number {
  return ankle.lengthM * (Math.sin(tiltRad + ankle.angleRad) - Math.sin(restTiltRad + ankle.angleRad));
}

/**
 * Horizontal distance from the metatarsal heads to the ankle axis: the lever of the ground force about the ankle.
 *
 * @param tiltRad - elevation of the foot line [rad]
 * @param ankle - ankle axis seen from the metatarsal heads [m, rad]
 * @returns lever [m]
 *
 * Source: definition (rigid lever: R cos(tilt + b)).
 */
export function ankleLever(tiltRad: number, ankle: AnkleLever): number {
  return ankle.lengthM * Math.cos(tiltRad + ankle.angleRad);
}

/**
 * How far the heel travels towards the toes in a rise from a level floor.
 *
 * @param tiltRad - elevation of the foot line [rad]
 * @param heelLeverM - metatarsal heads to heel, > 0 [m]
 * @returns forward travel [m]
 *
 * Source: definition (rigid lever: L (1 - cos tilt)).
 */
export function heelTravel(tiltRad: number, heelLeverM: number): number {
  return heelLeverM * (1 - Math.cos(tiltRad));
}

/**
 * What a string between a base on the floor and the heel reads beyond its length at rest. It over-reads, since the heel
 * moves forward while it rises and pulls the string aslant.
 *
 * @param tiltRad - elevation of the foot line, rest on a level floor [rad]
 * @param heelLeverM - metatarsal heads to heel, > 0 [m]
 * @param restLengthM - length of the string at rest, > 0 [m]
 * @returns reading [m]
 *
 * Source: definition (Pythagoras: sqrt((l + h)^2 + d^2) - l).
 */
export function stringReading(tiltRad: number, heelLeverM: number, restLengthM: number): number {
  return Math.hypot(restLengthM + heelHeight(tiltRad, 0, heelLeverM), heelTravel(tiltRad, heelLeverM)) - restLengthM;
}

/**
 * Height of the heel from the reading of a string between a base on the floor and the heel: the inverse of
 * {@link stringReading}, in closed form.
 *
 * With s = l + reading: s^2 = (l + L sin t)^2 + L^2 (1 - cos t)^2, hence
 * l sin t - L cos t = (s^2 - l^2 - 2 L^2) / (2 L), a single sine of t shifted by atan2(L, l). A reading that no tilt up to
 * vertical can give is held at the nearest possible one.
 *
 * @param readingM - reading beyond the length at rest [m]
 * @param heelLeverM - metatarsal heads to heel, > 0 [m]
 * @param restLengthM - length of the string at rest, > 0 [m]
 * @returns height above the level at rest [m]
 *
 * Source: ours (algebra above).
 */
export function heightFromString(readingM: number, heelLeverM: number, restLengthM: number): number {
  const stretched = restLengthM + readingM;
  const right = (stretched * stretched - restLengthM * restLengthM - 2 * heelLeverM * heelLeverM) / (2 * heelLeverM);
  const sine = right / Math.hypot(heelLeverM, restLengthM);
  const tilt = Math.atan2(heelLeverM, restLengthM) + Math.asin(Math.min(1, Math.max(-1, sine)));
  return heelHeight(Math.min(Math.PI / 2, tilt), 0, heelLeverM);
}
