import type { Finding, Verdict } from '@larderwright/calc/findings';
import * as say from '#words/parts/stop-lines.ts';
import { wordsOf } from '../words/index.ts';

/** Every failed limit and every stop in words, each once, as paper prints them. */
export function stopLines(verdicts: readonly Verdict[], findings: readonly Finding[]): string[] {
  const failed = verdicts.filter(({ state }) => state === 'fail');
  const stops = findings.filter(({ severity }) => severity === 'stop');
  return [
    ...new Set([
      ...failed.map(({ reason, params }) => say.failHoldDoNotServe(wordsOf(reason, params).title)),
      ...stops.map(({ id, params }) => wordsOf(id, params).title),
    ]),
  ];
}
