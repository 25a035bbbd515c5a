import type { Contribution } from '@larderwright/calc/formula';
import { fixedText } from '@larderwright/calc/quantities';
import { gramsText, percentText } from '../parts/number-text.ts';

/** Where the figure of a line was read, in a word. */
const FROM = { declared: 'pack', table: 'table', part: 'by nature', unknown: 'not known' } as const;

/** A component line by line: weight × share = grams. What is not known is said, never counted as nothing. */
export function ContributionTable(props: { of: string; contributions: readonly Contribution[] }) {
  const { of, contributions } = props;
  const shown = contributions.filter(({ grams, massG }) => grams !== 0 && massG !== 0);
  const sorted = shown.toSorted((a, b) => (b.grams ?? Infinity) - (a.grams ?? Infinity));
  return (
    <div class="scroll">
      <table>
        <thead>
          <tr>
            <th scope="col">From</th>
            <th scope="col" class="n">
              Weight
            </th>
            <th scope="col" class="n">
              {of} in it
            </th>
            <th scope="col" class="n">
              {of}
            </th>
            <th scope="col">Read from</th>
          </tr>
        </thead>
        <tbody>
          {sorted.map(({ lineId, name, massG, fraction, grams, from }) => (
            <tr key={lineId}>
              <th scope="row">{name || 'Unnamed line'}</th>
              <td class="n">{massG === null ? 'not known' : gramsText(massG)}</td>
              <td class="n">{fraction === null ? 'not known' : percentText(fraction)}</td>
              <td class="n">{grams === null ? 'not known' : `${fixedText(grams, grams < 100 ? 1 : 0)} g`}</td>
              <td>{FROM[from]}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
