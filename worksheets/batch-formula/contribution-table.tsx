import type { Contribution } from '@larderwright/calc/formula';
import { fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/batch-formula/contribution-table.ts';
import { FigureTable } from '../parts/figure-table.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';

/** Where the figure of a line was read, in a word. */
const FROM = { declared: say.pack, table: say.table, part: say.byNature, unknown: say.notKnown } as const;

/** A component line by line: weight × share = grams. What is not known is said, never counted as nothing. */
export function ContributionTable(props: { of: string; contributions: readonly Contribution[] }) {
  const { of, contributions } = props;
  const shown = contributions.filter(({ grams, massG }) => grams !== 0 && massG !== 0);
  const sorted = shown.toSorted((a, b) => (b.grams ?? Infinity) - (a.grams ?? Infinity));
  return (
    <FigureTable
      columns={[say.from, say.weight, say.inIt(of), of, say.readFrom]}
      rows={sorted.map(({ lineId, name, massG, fraction, grams, from }) => ({
        key: lineId,
        head: name || say.unnamedLine,
        cells: [
          massG === null ? say.notKnown : gramsText(massG),
          fraction === null ? say.notKnown : percentText(fraction),
          grams === null ? say.notKnown : `${fixedText(grams, grams < 100 ? 1 : 0)} g`,
          FROM[from],
        ],
      }))}
    />
  );
}
