import type { Notice } from '../state/store.ts';

/** Messages about the record itself. */
export function noticeWords({ id, detail }: Notice): string {
  switch (id) {
    case 'storage-failed':
      return `This device is not keeping the batch (${detail}). It stays on screen while the page is open. Save it to a file or print it before you leave.`;
    case 'storage-full':
      return 'This device is full: the last changes of the batch are not kept. They stay on screen while the page is open. Save the batch to a file now, then make room: delete old batches after backing them up.';
    case 'storage-blocked':
      return `The browser lets this site keep nothing (${detail}). Private windows and strict settings do that, or another tab of an older version: close it and reload. What you type stays on screen while the page is open. Save it to a file or print it before you leave.`;
    case 'storage-cleared':
      return 'The browser has cleared what this site had kept, other batches too. This one was on screen and is written again. Bring the others back from your last backup.';
    case 'batch-deleted':
      return 'This batch was deleted in another tab. What stands here is kept no longer.';
    case 'record-damaged':
      return `The last batch could not be read (at ${detail || 'its root'}). It was set aside whole on this device and not changed. The page of batches shows it and saves it to a file.`;
    case 'record-newer':
      return `The last batch was written by a newer version of this site (record version ${detail}). Reload the page to get that version. The batch was not changed.`;
    case 'demo-missing':
      return `The demo batch "${detail}" could not be fetched.`;
    case 'example-missing':
      return 'The example of this page could not be fetched. Reload the page to try again.';
    case 'batch-missing':
      return 'The batch last on the bench is no longer on this device. A new one begins with the first thing you type.';
  }
}
