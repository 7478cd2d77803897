import { StorageError } from '@surae/storage';

/**
 * What was still being read when a clinic was locked is of no use to anybody: its refusal is no fault of the page. Whatever was to
 * be written is written before a lock falls, and whoever waits for it is told otherwise.
 */
export function letLockedReadsGo(target: EventTarget): void {
  target.addEventListener('unhandledrejection', (event) => {
    const reason: unknown = (event as PromiseRejectionEvent).reason;
    if (reason instanceof StorageError && reason.code === 'locked') event.preventDefault();
  });
}
