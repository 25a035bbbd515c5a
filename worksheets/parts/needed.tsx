import type { MissingInput } from '@larderwright/calc/findings';
import * as say from '#words/parts/needed.ts';

interface NeededProps {
  missing: readonly MissingInput[];
  /** What each figure is called: "the shopping list". A figure not named here is not told. */
  figures: Readonly<Record<string, string>>;
  /** What an input is called in the middle of a sentence: "the price of pork belly". */
  nameOf: (field: string) => string;
}

/** What is still blank or unreadable, figure by figure. */
export function Needed({ missing, figures, nameOf }: NeededProps) {
  const lines = Object.entries(figures).flatMap(([figure, name]) => {
    const fields = missing.filter(({ neededFor }) => neededFor === figure).map(({ field }) => nameOf(field));
    return fields.length === 0 ? [] : [{ figure, name, fields: [...new Set(fields)] }];
  });
  return (
    <>
      {lines.map(({ figure, name, fields }) => (
        <p key={figure} class="say">
          {say.stillNeededFor(name, fields.join(', '))}
        </p>
      ))}
    </>
  );
}
