import { CURING_TIME_RULES, type CureTime, SALT_DIFFUSION_M2_PER_S } from '@larderwright/calc/dry-cure';
import { fixedText } from '@larderwright/calc/quantities';
import { type Mark, sourceOf } from '@larderwright/calc/sources';
import type { ComponentChildren } from 'preact';
import * as say from '#words/whole-muscle/cure-times.ts';
import { Answer } from '../parts/answer.tsx';
import { type FigureRow, FigureTable } from '../parts/figure-table.tsx';
import { CURING_TIME_NAMES } from '../words/curing-time-names.ts';

const MARK_WORDS: Readonly<Partial<Record<Mark, string>>> = {
  memory: say.fromMemory,
  'common-practice': say.commonPracticeNoSource,
  derived: say.derived,
};

/** "12 to 38 days", or one figure where both ends meet. */
function daysText({ low, high }: { low: number; high: number }): string {
  return low === high ? say.days(low) : say.toDays(low, high);
}

interface CureTimesProps {
  time: CureTime;
  label?: string;
  children?: ComponentChildren;
}

/** Days in the cure, with every rule behind them. The longest is the guidance. */
export function CureTimes({ time, label = say.daysInTheCureAsGuidance, children }: CureTimesProps) {
  const { guidanceDays, diffusionDays, rules } = time;
  const rows: FigureRow[] = rules.map(({ ruleId, days, inRange }) => {
    const rule = CURING_TIME_RULES.find(({ id }) => id === ruleId);
    const mark = rule === undefined ? undefined : MARK_WORDS[rule.mark];
    return {
      key: ruleId,
      head: CURING_TIME_NAMES[ruleId],
      cells: [
        say.days2(fixedText(days, 1, 'up')),
        inRange ? say.asMeant : say.notMadeForThisThickness,
        rule === undefined ? '' : `${sourceOf(rule.source).title}${mark === undefined ? '' : `; ${mark}`}`,
      ],
    };
  });
  if (diffusionDays !== null) {
    const source = say.fromMemory2(sourceOf('salt-diffusion-in-pork').title);
    rows.push(
      {
        key: 'fast',
        head: say.saltDiffusingQuickly,
        cells: [say.days3(fixedText(diffusionDays.fast, 1, 'up')), say.to90InTheMiddle, source],
      },
      {
        key: 'slow',
        head: say.saltDiffusingSlowly,
        cells: [say.days4(fixedText(diffusionDays.slow, 1, 'up')), say.to90InTheMiddle, source],
      },
    );
  }
  return (
    <Answer
      label={label}
      value={guidanceDays === null ? null : daysText(guidanceDays)}
      missing={say.cannotTellMeasureThickestPlace}
      worked={
        <>
          <p>
            {say.everyRuleBelowSaltDiffusing(
              fixedText(SALT_DIFFUSION_M2_PER_S.slow * 1e10, 0),
              fixedText(SALT_DIFFUSION_M2_PER_S.fast * 1e10, 0),
            )}
          </p>
          {rows.length > 0 ? (
            <FigureTable columns={[say.rule, say.gives, say.meant, say.by]} rows={rows} words />
          ) : null}
        </>
      }
    >
      {children}
    </Answer>
  );
}
