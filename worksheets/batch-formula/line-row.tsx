import type { Finding } from '@larderwright/calc/findings';
import type { FormulaLine, MixLine } from '@larderwright/calc/formula';
import * as say from '#words/batch-formula/line-row.ts';
import { CureStrength } from '../parts/cure-strength.tsx';
import { at, FindingList, within } from '../parts/finding-list.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';
import { RowTools } from '../parts/row-tools.tsx';
import { AmountField } from './amount-field.tsx';
import { IngredientField } from './ingredient-field.tsx';
import { PackFigures } from './pack-figures.tsx';
import { PartField } from './part-field.tsx';

interface LineRowProps {
  line: FormulaLine;
  place: number;
  last: boolean;
  /** What calc makes of the line; null while nothing is computed. */
  mix: MixLine | null;
  /** Where the figures of the line come from, in words. */
  figures: string;
  findings: readonly Finding[];
  isNew: boolean;
}

/** Fields of a line that show their own findings. */
const OWN_FIELDS = ['part', 'amount', 'cure.nitrite', 'cure.nitrate', 'carriedNitrite', 'actual', 'lot'];

function isShownAtField(field: string, path: string): boolean {
  const name = field.slice(path.length + 1);
  return OWN_FIELDS.includes(name) || name.startsWith('declared.');
}

/** One line of the plan: what, in which part, how much, and what that comes to. */
export function LineRow({ line, place, last, mix, figures, findings, isNew }: LineRowProps) {
  const path = `formula.lines.${line.id}`;
  const name = line.name || say.line(place + 1);
  const mine = within(findings, path);
  return (
    <li class="mix-line" aria-label={name}>
      <div class="mix-name">
        <IngredientField line={line} focusOnMount={isNew} />
      </div>
      <div class="mix-amount">
        <AmountField line={line} findings={at(mine, `${path}.amount`)} />
      </div>
      <div class="mix-part">
        <PartField line={line} findings={at(mine, `${path}.part`)} />
      </div>
      <dl class="mix-figures">
        <div>
          <dt>{say.weight}</dt>
          <dd>{mix?.massG == null ? '–' : gramsText(mix.massG)}</dd>
        </div>
        <div>
          <dt>{say.ofAll}</dt>
          <dd>{mix?.ofTotalFraction == null ? '–' : percentText(mix.ofTotalFraction)}</dd>
        </div>
        <div>
          <dt>{say.ofMeat}</dt>
          <dd>{mix?.ofMeatFraction == null ? '–' : percentText(mix.ofMeatFraction)}</dd>
        </div>
      </dl>
      <RowTools list="formula.lines" id={line.id} label={name} first={place === 0} last={last} />
      <div class="mix-more">
        {figures === '' ? null : <p class="field-hint">{figures}</p>}
        <PackFigures line={line} findings={mine} />
        {line.part === 'curing-salt' ? <CureStrength lineId={line.id} findings={mine} /> : null}
        <FindingList findings={mine.filter(({ field }) => !isShownAtField(field ?? '', path))} />
      </div>
    </li>
  );
}
