/** Why a file is no run. Each has words that say what was expected. */
export type RunFileCode =
  /** no bytes, or nothing but blanks */
  | 'empty'
  | 'too-large'
  /** bytes that are no text in UTF-8, as of a picture or an archive */
  | 'not-text'
  /** a page of the web */
  | 'web-page'
  /** text that is no XML */
  | 'not-xml'
  /** XML of another kind */
  | 'other-xml'
  /** definitions of its own at its head: what they stand for is never filled in */
  | 'definitions'
  /** ends early, or breaks the rules of XML */
  | 'damaged'
  | 'bad-position'
  /** places or a route, and no track */
  | 'no-track'
  /** a track without times, as a planned way has it */
  | 'no-times'
  | 'too-few'
  /** tracks that began on several days */
  | 'several-days'
  /** nobody moved in it */
  | 'no-move';

/** A file that is no run: where it broke, if that is known, and what came. */
export class RunFileError extends Error {
  override readonly name = 'RunFileError';
  readonly code: RunFileCode;
  /** what came, short */
  readonly got: string;

  constructor(code: RunFileCode, got: string) {
    super(`${code}: ${got}`);
    this.code = code;
    this.got = got;
  }
}
