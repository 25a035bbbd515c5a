import type { Notice } from '../state/store.ts';

/** Messages about the record itself. */
export function noticeWords(notice: Notice): string {
  switch (notice.id) {
    case 'storage-failed':
      return `This device is not keeping the batch (${notice.detail}). It stays on screen while the page is open. Print it before you leave.`;
    case 'record-damaged':
      return `The last batch could not be read (at ${notice.detail || 'its root'}). It was set aside whole on this device and not changed.`;
    case 'record-newer':
      return `The last batch was written by a newer version of this site (record version ${notice.detail}). Reload the page to get that version. The batch was not changed.`;
    case 'demo-missing':
      return `The demo batch "${notice.detail}" could not be fetched.`;
    case 'example-missing':
      return 'The example of this page could not be fetched. Reload the page to try again.';
    case 'batch-missing':
      return 'The batch last on the bench is no longer on this device. A new one begins with the first thing you type.';
  }
}
