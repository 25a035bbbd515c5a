import { familyOf, type NamedShare } from '@larderwright/calc/formula';
import { fixedText } from '@larderwright/calc/quantities';
import { sourceOf } from '@larderwright/calc/sources';
import * as say from '#words/batch-formula/family-ranges.ts';
import { FigureTable } from '../parts/figure-table.tsx';
import { useAt, useShared } from '../state/use-shared.ts';
import { $formula } from './computed.ts';
import { familyRows } from './family-rows.ts';

/** The usual ranges of the chosen family beside this mix. */
export function FamilyRanges() {
  const id = useAt('formula.familyId');
  const computed = useShared($formula);
  const family = familyOf(typeof id === 'string' ? id : null);
  if (!family) return null;
  const rows = familyRows(family, computed.state === 'ready' ? computed.value.values.mix : null);
  return (
    <details class="worked">
      <summary>{say.usualRanges(family.name)}</summary>
      <div class="worked-body">
        {rows.length > 0 ? (
          <FigureTable
            columns={[say.ofEverythingInTheBowl, say.usually, say.here]}
            rows={rows.map(({ what, usually, here }) => ({
              key: what,
              head: what,
              cells: [usually, here ?? '–'],
            }))}
          />
        ) : null}
        <p>{family.remark}</p>
        {family.named.map((share) => (
          <p key={share.name}>{namedText(share)}</p>
        ))}
        <p>{say.rangesCommonPracticeNoSource}</p>
      </div>
    </details>
  );
}

/** A share that a law ties to a name, with the law. */
function namedText({ name, what, min, max, source, mark }: NamedShare): string {
  const bounds = [
    min === undefined ? null : say.atLeast(fixedText(min * 100, 0, 'up')),
    max === undefined ? null : say.atMost(fixedText(max * 100, 0, 'down')),
  ].filter(Boolean);
  const { title, edition } = sourceOf(source);
  const check = mark === 'memory' ? say.fromMemoryCheckTheCurrentText : '';
  return say.soldAs(name, what, bounds.join(', '), title, edition, check);
}
