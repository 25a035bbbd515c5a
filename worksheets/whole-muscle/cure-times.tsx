import { CURING_TIME_RULES, type CureTime, SALT_DIFFUSION_M2_PER_S } from '@larderwright/calc/dry-cure';
import { fixedText } from '@larderwright/calc/quantities';
import { type Mark, sourceOf } from '@larderwright/calc/sources';
import type { ComponentChildren } from 'preact';
import { Answer } from '../parts/answer.tsx';
import { type FigureRow, FigureTable } from '../parts/figure-table.tsx';
import { CURING_TIME_NAMES } from '../words/curing-time-names.ts';

const MARK_WORDS: Readonly<Partial<Record<Mark, string>>> = {
  memory: 'from memory',
  'common-practice': 'common practice, no source',
  derived: 'derived',
};

/** "12 to 38 days", or one figure where both ends meet. */
function daysText({ low, high }: { low: number; high: number }): string {
  return low === high ? `${low} days` : `${low} to ${high} days`;
}

interface CureTimesProps {
  time: CureTime;
  label?: string;
  children?: ComponentChildren;
}

/** Days in the cure, with every rule behind them. The longest is the guidance. */
export function CureTimes({ time, label = 'Days in the cure, as guidance', children }: CureTimesProps) {
  const { guidanceDays, diffusionDays, rules } = time;
  const rows: FigureRow[] = rules.map(({ ruleId, days, inRange }) => {
    const rule = CURING_TIME_RULES.find(({ id }) => id === ruleId);
    const mark = rule === undefined ? undefined : MARK_WORDS[rule.mark];
    return {
      key: ruleId,
      head: CURING_TIME_NAMES[ruleId],
      cells: [
        `${fixedText(days, 1, 'up')} days`,
        inRange ? 'as meant' : 'not made for this thickness',
        rule === undefined ? '' : `${sourceOf(rule.source).title}${mark === undefined ? '' : `; ${mark}`}`,
      ],
    };
  });
  if (diffusionDays !== null) {
    const source = `${sourceOf('salt-diffusion-in-pork').title}; from memory`;
    rows.push(
      {
        key: 'fast',
        head: 'Salt diffusing quickly',
        cells: [`${fixedText(diffusionDays.fast, 1, 'up')} days`, 'to 90 % in the middle', source],
      },
      {
        key: 'slow',
        head: 'Salt diffusing slowly',
        cells: [`${fixedText(diffusionDays.slow, 1, 'up')} days`, 'to 90 % in the middle', source],
      },
    );
  }
  return (
    <Answer
      label={label}
      value={guidanceDays === null ? null : daysText(guidanceDays)}
      missing="Cannot tell: measure the thickest place"
      worked={
        <>
          <p>
            Every rule below, and salt diffusing into a slab from both faces until its middle stands at 90 %
            of the end: F × (half the thickness)² ÷ D, with D from{' '}
            {fixedText(SALT_DIFFUSION_M2_PER_S.slow * 1e10, 0)} to{' '}
            {fixedText(SALT_DIFFUSION_M2_PER_S.fast * 1e10, 0)} × 10⁻¹⁰ m²/s at 2 to 5 °C (from memory). The
            longest counts, rounded up to whole days. Nitrite is slower still: it reacts on its way.
          </p>
          {rows.length > 0 ? (
            <FigureTable columns={['Rule', 'Gives', 'Meant', 'By']} rows={rows} words />
          ) : null}
        </>
      }
    >
      {children}
    </Answer>
  );
}
