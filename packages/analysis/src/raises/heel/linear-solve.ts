/**
 * Solution of a symmetric positive system by Cholesky's method, in place.
 *
 * @param matrix - row after row, lower triangle used; overwritten with its root [any unit]
 * @param right - right-hand sides, each overwritten with its solution [any unit]
 * @param size - number of unknowns [-]
 * @returns false when the matrix is not positive: then the right-hand sides are spoilt [-]
 *
 * Source: Golub & Van Loan (2013), Matrix Computations, 4th ed., 4.2
 */
export function solveSymmetric(matrix: Float64Array, right: readonly Float64Array[], size: number): boolean {
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * size + j];
      for (let k = 0; k < j; k++) sum -= matrix[i * size + k] * matrix[j * size + k];
      if (i === j) {
        if (!(sum > 0)) return false;
        matrix[i * size + i] = Math.sqrt(sum);
      } else matrix[i * size + j] = sum / matrix[j * size + j];
    }
  }
  for (const one of right) {
    for (let i = 0; i < size; i++) {
      let sum = one[i];
      for (let k = 0; k < i; k++) sum -= matrix[i * size + k] * one[k];
      one[i] = sum / matrix[i * size + i];
    }
    for (let i = size - 1; i >= 0; i--) {
      let sum = one[i];
      for (let k = i + 1; k < size; k++) sum -= matrix[k * size + i] * one[k];
      one[i] = sum / matrix[i * size + i];
    }
  }
  return true;
}
