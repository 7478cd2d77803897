import { encode } from 'uqr';

/** Side of a code in modules at most: a camera of an ordinary phone reads it from paper; ours. */
const sideMost = 97;

/** The modules of a text as one path; undefined where it is too much for a camera. */
export function codePath(text: string): { readonly size: number; readonly path: string } | undefined {
  try {
    const { data, size } = encode(text, { ecc: 'L', border: 4 });
    if (size > sideMost) return undefined;
    const path = data.flatMap((row, y) => row.flatMap((isDark, x) => (isDark ? `M${x} ${y}h1v1h-1z` : []))).join('');
    return { size, path };
  } catch {
    return undefined;
  }
}
