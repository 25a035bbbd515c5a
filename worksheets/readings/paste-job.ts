import {
  lookAtPaste,
  type PastedLog,
  type PasteIssue,
  type PasteLook,
  type PasteOptions,
  parseProbeLog,
} from '@larderwright/calc/probe-log';

export interface PasteJob {
  text: string;
  options: PasteOptions;
}

/** What a log was read as, or why not, and how it is built. */
export interface PasteRead {
  log: PastedLog | null;
  issue: PasteIssue | null;
  look: PasteLook;
}

/** Reads a log. Long ones take seconds: run it in the worker. */
export function runPaste({ text, options }: PasteJob): PasteRead {
  const result = parseProbeLog(text, options);
  const look = lookAtPaste(text, options);
  return result.ok ? { log: result.value, issue: null, look } : { log: null, issue: result.issue, look };
}
