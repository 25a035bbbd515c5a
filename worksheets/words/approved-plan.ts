import type { Params } from '@larderwright/calc/findings';
import type { Wording } from './wording.ts';

/** The stop of everything fermented or dried. It is shown before anything is computed, so it stands by itself. */
export function approvedPlanWords({ plan }: Params): Wording {
  return {
    title:
      plan === undefined
        ? 'Stop: this needs an accepted plan.'
        : `Stop: work only by the accepted plan "${plan}".`,
    body: 'A fermented or dried product needs a process accepted by your authority or a qualified processing specialist. Do not sell on the strength of a worksheet.',
  };
}
