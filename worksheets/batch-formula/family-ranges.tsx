import { type Band, type Family, familyOf, type Mix } from '@larderwright/calc/formula';
import { fixedText } from '@larderwright/calc/quantities';
import { FigureTable } from '../parts/figure-table.tsx';
import { percentText } from '../parts/number-text.ts';
import { useAt, useShared } from '../state/use-shared.ts';
import { PART_NAMES } from '../words/line-parts.ts';
import { $formula } from './computed.ts';

const bandText = ({ min, max, usual }: Band) =>
  `${fixedText(min * 100, 1)}–${fixedText(max * 100, 1)} %${usual === undefined ? '' : `, often ${fixedText(usual * 100, 2)} %`}`;

interface Row {
  what: string;
  band: Band;
  here: number | null;
}

function rowsOf(family: Family, mix: Mix | null): Row[] {
  const rows: Row[] = [];
  for (const [part, name] of Object.entries(PART_NAMES)) {
    const band = family.parts[part as keyof typeof PART_NAMES];
    if (!band) continue;
    const lines = mix?.lines.filter((line) => line.part === part) ?? [];
    const known =
      mix !== null && mix.totalG !== null && lines.every(({ ofTotalFraction }) => ofTotalFraction !== null);
    rows.push({
      what: name,
      band,
      here: known ? lines.reduce((sum, { ofTotalFraction }) => sum + (ofTotalFraction ?? 0), 0) : null,
    });
  }
  if (family.chemicalFat)
    rows.push({
      what: 'Fat a laboratory would find',
      band: family.chemicalFat,
      here: mix?.fat.fraction ?? null,
    });
  if (family.salt)
    rows.push({
      what: `Salt from all sources${family.saltOf === 'total' ? '' : `, on the ${family.saltOf}`}`,
      band: family.salt,
      here: family.saltOf === 'total' ? (mix?.salt.fraction ?? null) : null,
    });
  return rows;
}

/** The usual ranges of the chosen family beside this mix. */
export function FamilyRanges() {
  const id = useAt('formula.familyId');
  const computed = useShared($formula);
  const family = familyOf(typeof id === 'string' ? id : null);
  if (!family) return null;
  const mix = computed.state === 'ready' ? computed.value.values.mix : null;
  const rows = rowsOf(family, mix);
  return (
    <details class="worked">
      <summary>Usual ranges: {family.name}</summary>
      <div class="worked-body">
        {rows.length > 0 ? (
          <FigureTable
            columns={['Of everything in the bowl', 'Usually', 'Here']}
            rows={rows.map(({ what, band, here }) => ({
              key: what,
              head: what,
              cells: [bandText(band), here === null ? '–' : percentText(here)],
            }))}
          />
        ) : null}
        <p>{family.remark}</p>
        <p>Common practice, no source. Food outside these ranges may be good.</p>
      </div>
    </details>
  );
}
