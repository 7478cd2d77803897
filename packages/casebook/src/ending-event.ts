/** What ends a test at once and is more than a reason: a pop, or a sudden give. */
export type EndingEvent = 'pop';
