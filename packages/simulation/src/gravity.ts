/** Standard acceleration of gravity [m/s2]; 3rd General Conference on Weights and Measures (1901). */
export const standardGravity = 9.80665;
