/** 1 where a browser tells the specific force, upwards at rest; -1 where it tells the opposite. */
export type MotionSign = 1 | -1;

/** At rest nothing but gravity is told; beyond this share of it the device is not still or not flat [-]; ours. */
const flatShare = 0.9;

/** Standard acceleration of free fall (CGPM 1901) [m/s2]. */
const gravityMs2 = 9.80665;

/**
 * The sign that a browser is expected to use, from what it names as its maker.
 *
 * The draft gives a device that lies on its back 9.8 m/s2 along z, which is the specific force. Browsers on the engine of iOS
 * give the opposite, with gravity and without.
 *
 * Source: W3C Device Orientation and Motion, draft, example of a device lying flat, and its issue 96; reports of opposite
 * signs with plots in dorukeker/gyronorm.js issue 54. Which makers do so is common practice.
 */
export function expectedSign(vendor: string): MotionSign {
  return vendor.startsWith('Apple') ? -1 : 1;
}

/**
 * The sign that a device uses, seen while it lies still on its back, screen up; null when it does not lie so.
 *
 * It cannot be seen in any other way: turning every acceleration round leaves all laws of motion between them as they are.
 */
export function signLyingOnBack(z: number): MotionSign | null {
  if (Math.abs(z) < flatShare * gravityMs2) return null;
  return z > 0 ? 1 : -1;
}
