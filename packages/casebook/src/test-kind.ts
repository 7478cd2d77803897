/** What can be tested in a visit. */
export type TestKind = 'heel-raise' | 'isometric';
