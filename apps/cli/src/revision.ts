/**
 * Goes up with each change of results, or of the form in which they are kept, that the version does not tell: results that an older
 * build left in a journal or a database are then found anew, and stay where they are.
 */
export const REVISION = 5;
