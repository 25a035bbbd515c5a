import type { Notice } from './store.ts';

/** What a failed write means to the person at the bench. */
export function troubleOf(error: unknown): Notice {
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  const detail = error instanceof Error ? error.message : String(error);
  if (name === 'QuotaExceededError') return { id: 'storage-full', detail };
  if (['SecurityError', 'InvalidStateError', 'NotAllowedError', 'TimeoutError'].includes(name))
    return { id: 'storage-blocked', detail };
  return { id: 'storage-failed', detail };
}
