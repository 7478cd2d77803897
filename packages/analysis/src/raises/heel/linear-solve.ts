/** Root of a symmetric positive matrix, in place: its lower triangle; false where it is not positive. */
function factor(matrix: Float64Array, size: number, stride: number): boolean {
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * stride + j];
      for (let k = 0; k < j; k++) sum -= matrix[i * stride + k] * matrix[j * stride + k];
      if (i === j) {
        if (!(sum > 0)) return false;
        matrix[i * stride + i] = Math.sqrt(sum);
      } else matrix[i * stride + j] = sum / matrix[j * stride + j];
    }
  }
  return true;
}

/**
 * Solution of a symmetric positive system by Cholesky's method, in place.
 *
 * @param matrix - row after row, lower triangle used; overwritten with its root [any unit]
 * @param right - right-hand sides, each overwritten with its solution [any unit]
 * @param size - number of unknowns [-]
 * @param stride - length of a row, where it is longer than that [-]
 * @returns false when the matrix is not positive: then the right-hand sides are spoilt [-]
 *
 * Source: Golub & Van Loan (2013), Matrix Computations, 4th ed., 4.2
 */
export function solveSymmetric(
  matrix: Float64Array,
  right: readonly Float64Array[],
  size: number,
  stride = size,
): boolean {
  if (!factor(matrix, size, stride)) return false;
  for (const one of right) {
    for (let i = 0; i < size; i++) {
      let sum = one[i];
      for (let k = 0; k < i; k++) sum -= matrix[i * stride + k] * one[k];
      one[i] = sum / matrix[i * stride + i];
    }
    for (let i = size - 1; i >= 0; i--) {
      let sum = one[i];
      for (let k = i + 1; k < size; k++) sum -= matrix[k * stride + i] * one[k];
      one[i] = sum / matrix[i * stride + i];
    }
  }
  return true;
}

/**
 * The same for many right-hand sides that stand side by side in one array: they are solved together, row by row, since none waits
 * for another.
 *
 * @param matrix - row after row, lower triangle used; overwritten with its root [any unit]
 * @param right - row after row, a column for each right-hand side; overwritten with the solutions [any unit]
 * @param size - number of unknowns [-]
 * @param stride - length of a row of the matrix, where it is longer than that [-]
 * @returns false when the matrix is not positive: then the right-hand sides are as they were [-]
 *
 * Source: Golub & Van Loan (2013), Matrix Computations, 4th ed., 4.2
 */
export function solveSideBySide(matrix: Float64Array, right: Float64Array, size: number, stride = size): boolean {
  if (!factor(matrix, size, stride)) return false;
  const width = right.length / size;
  for (let i = 0; i < size; i++) {
    for (let k = 0; k < i; k++) takeRow(right, i * width, k * width, matrix[i * stride + k], width);
    divideRow(right, i * width, matrix[i * stride + i], width);
  }
  for (let i = size - 1; i >= 0; i--) {
    for (let k = i + 1; k < size; k++) takeRow(right, i * width, k * width, matrix[k * stride + i], width);
    divideRow(right, i * width, matrix[i * stride + i], width);
  }
  return true;
}

function takeRow(rows: Float64Array, from: number, other: number, factorOf: number, width: number): void {
  for (let b = 0; b < width; b++) rows[from + b] = rows[from + b] - factorOf * rows[other + b];
}

function divideRow(rows: Float64Array, from: number, by: number, width: number): void {
  for (let b = 0; b < width; b++) rows[from + b] = rows[from + b] / by;
}
