/** Why something of a study was refused. Each comment says when it occurs and what to do. */
export type StudyErrorCode =
  /** a file that is not what it should be, or one that contradicts itself: see the path */
  | 'bad-file'
  /** a study file of a newer version: update the software */
  | 'newer-version'
  /** a reason to leave a trial out that was not declared before: declare it in an amendment, or use one that was */
  | 'undeclared-reason'
  /** a decision about a trial that is not there: see the list of trials */
  | 'unknown-trial'
  /** entries that do not follow from those before them: something was changed, taken out or put in between */
  | 'broken-chain'
  /** something that may only come before the lock, or only after it */
  | 'out-of-turn'
  /** more analyses than are done at once: declare fewer choices, or say a higher number */
  | 'too-many'
  /** a number, a name or a list that cannot be */
  | 'out-of-range';

/** Where it happened, what was expected and what came. */
export interface StudyErrorDetails {
  readonly file?: string;
  /** place in a document, as in `exclusions[0].code`, or in a list, as in `entry 3` */
  readonly path?: string;
  readonly expected: string;
  readonly actual: string;
}

/** Something of a study that cannot be followed: says where, what was expected and what came. */
export class StudyError extends Error {
  override readonly name = 'StudyError';
  readonly code: StudyErrorCode;
  readonly details: StudyErrorDetails;

  constructor(code: StudyErrorCode, details: StudyErrorDetails, options?: ErrorOptions) {
    const place = [details.file, details.path].filter((part) => part !== undefined).join(', ');
    super(`${place === '' ? '' : `${place}: `}expected ${details.expected}, got ${details.actual}`, options);
    this.code = code;
    this.details = details;
  }
}
