/** Why an argument was refused. */
export type InputErrorCode =
  /** fewer samples than the method needs: record for longer */
  | 'too-short'
  /** NaN or infinity in a signal: repair or refuse the recording first */
  | 'not-finite'
  /** two arrays that belong together differ in length: the caller mixed two recordings */
  | 'length-mismatch'
  /** a number outside its allowed range: see `expected` */
  | 'out-of-range'
  /** sample times that do not rise: sort or refuse the recording first */
  | 'not-increasing'
  /** the trace lacks the channel that the placement needs: check the mapping */
  | 'missing-channel';

/** The caller broke the contract of a function: says which argument, what was expected and what came. */
export class InputError extends RangeError {
  override readonly name = 'InputError';
  readonly code: InputErrorCode;
  readonly details: { readonly argument: string; readonly expected: string; readonly actual: string };

  constructor(code: InputErrorCode, details: { argument: string; expected: string; actual: string }) {
    super(`${details.argument}: expected ${details.expected}, got ${details.actual}`);
    this.code = code;
    this.details = details;
  }
}
