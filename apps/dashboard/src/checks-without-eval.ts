// The policy of the page refuses text that becomes code, and the checks of documents would try whether it does. So this comes before
// whatever checks, in the page and in its workers.
const checks = globalThis as { __zod_globalConfig?: { jitless?: boolean } };
checks.__zod_globalConfig = Object.assign(checks.__zod_globalConfig ?? {}, { jitless: true });
