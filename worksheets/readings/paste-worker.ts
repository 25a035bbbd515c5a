import { type PasteJob, runPaste } from './paste-job.ts';

/** Reads one log beside the page and hands back what it was read as. */
addEventListener('message', ({ data }: MessageEvent<PasteJob>) => postMessage(runPaste(data)));
