import type { Contribution } from '@larderwright/calc/formula';
import { fixedText } from '@larderwright/calc/quantities';
import { FigureTable } from '../parts/figure-table.tsx';
import { gramsText, percentText } from '../parts/number-text.ts';

/** Where the figure of a line was read, in a word. */
const FROM = { declared: 'pack', table: 'table', part: 'by nature', unknown: 'not known' } as const;
const NOT_KNOWN = 'not known';

/** A component line by line: weight × share = grams. What is not known is said, never counted as nothing. */
export function ContributionTable(props: { of: string; contributions: readonly Contribution[] }) {
  const { of, contributions } = props;
  const shown = contributions.filter(({ grams, massG }) => grams !== 0 && massG !== 0);
  const sorted = shown.toSorted((a, b) => (b.grams ?? Infinity) - (a.grams ?? Infinity));
  return (
    <FigureTable
      columns={['From', 'Weight', `${of} in it`, of, 'Read from']}
      rows={sorted.map(({ lineId, name, massG, fraction, grams, from }) => ({
        key: lineId,
        head: name || 'Unnamed line',
        cells: [
          massG === null ? NOT_KNOWN : gramsText(massG),
          fraction === null ? NOT_KNOWN : percentText(fraction),
          grams === null ? NOT_KNOWN : `${fixedText(grams, grams < 100 ? 1 : 0)} g`,
          FROM[from],
        ],
      }))}
    />
  );
}
