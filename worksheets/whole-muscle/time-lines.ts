import type { CureTime } from '@larderwright/calc/dry-cure';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/whole-muscle/time-lines.ts';
import { CURING_TIME_NAMES } from '../words/curing-time-names.ts';

/** Days by every rule and by diffusion, for paper. Guidance only: the longest counts. */
export function timeLines({ rules, diffusionDays }: CureTime): string[] {
  return [
    ...rules.map(({ ruleId, days, inRange }) =>
      say.days(
        CURING_TIME_NAMES[ruleId],
        fixedText(days, 1, 'up'),
        inRange ? '' : say.notMadeForThisThickness,
      ),
    ),
    ...(diffusionDays === null
      ? []
      : [
          say.saltDiffusing90MiddleDays(
            fixedText(diffusionDays.fast, 1, 'up'),
            fixedText(diffusionDays.slow, 1, 'up'),
          ),
        ]),
  ];
}
