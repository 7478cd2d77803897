/** The number that a counter stands for, when it has begun again an unknown number of times: the one nearest to another. */
export function unwrapNear(raw: number, modulus: number, near: number): number {
  return raw + modulus * Math.round((near - raw) / modulus);
}
