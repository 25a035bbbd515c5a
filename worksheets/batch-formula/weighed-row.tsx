import type { Finding } from '@larderwright/calc/findings';
import type { FormulaLine, MixLine } from '@larderwright/calc/formula';
import { entryValue } from '@larderwright/calc/quantities';
import * as say from '#words/batch-formula/weighed-row.ts';
import { at, FindingList, within } from '../parts/finding-list.tsx';
import { NumberField } from '../parts/number-field.tsx';
import { gramsText } from '../parts/number-text.ts';
import { TextField } from '../parts/text-field.tsx';
import { PART_NAMES } from '../words/line-parts.ts';

interface WeighedRowProps {
  line: FormulaLine;
  place: number;
  /** The line as planned; null while nothing is computed. */
  plan: MixLine | null;
  findings: readonly Finding[];
}

/** The difference as it is spoken of at the scale: more or less than planned. */
function differenceText(actualG: number, plannedG: number): string {
  const differenceG = actualG - plannedG;
  if (Math.abs(differenceG) < 0.005) return say.asPlanned;
  return `${gramsText(Math.abs(differenceG))} ${differenceG > 0 ? say.more : say.less}`;
}

/** One line at the scale: what was planned, what the scale showed, which lot. */
export function WeighedRow({ line, place, plan, findings }: WeighedRowProps) {
  const path = `formula.lines.${line.id}`;
  const name = line.name || say.line(place + 1);
  const curing = line.part === 'curing-salt';
  const actualG = entryValue('mass', line.actual, { gramsOnly: curing });
  const plannedG = plan?.massG ?? null;
  const mine = within(findings, path);
  return (
    <li class="mix-line" aria-label={name}>
      <p class="mix-name weighed-name">
        <strong>{name}</strong> <span>{PART_NAMES[line.part]}</span>
      </p>
      <dl class="mix-figures">
        <div>
          <dt>{say.planned}</dt>
          <dd>{plannedG === null ? '–' : gramsText(plannedG)}</dd>
        </div>
      </dl>
      <NumberField
        path={`${path}.actual`}
        label={say.asWeighed}
        kind="mass"
        units={curing ? undefined : ['g', 'kg']}
        gramsOnly={curing}
        findings={at(mine, `${path}.actual`)}
        compact
      />
      <dl class="mix-figures">
        <div>
          <dt>{say.difference}</dt>
          <dd>{actualG === null || plannedG === null ? '–' : differenceText(actualG, plannedG)}</dd>
        </div>
      </dl>
      <TextField path={`${path}.lot`} label={say.lot} findings={at(mine, `${path}.lot`)} compact />
      {curing ? (
        <div class="mix-more">
          <FindingList findings={mine.filter(({ field }) => field?.startsWith(`${path}.cure`))} />
        </div>
      ) : null}
    </li>
  );
}
