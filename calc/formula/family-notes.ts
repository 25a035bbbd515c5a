import { compensatedSum, fromBase, roundTo } from '../quantities/index.ts';
import type { FormulaFacts } from './facts.ts';
import { type Band, FAMILY_SOURCE, type Family } from './families/index.ts';
import type { FormulaFinding } from './finding-ids.ts';
import type { Mix } from './mix.ts';
import type { LinePart } from './slice.ts';

const PER_CENT = 100;

/** Whether a share lies outside a band as it would be printed: 1.64 % is not under 1.6 %. */
function isOutside(fraction: number, band: Band): boolean {
  const shown = roundTo(fraction * PER_CENT, 2);
  return shown < roundTo(band.min * PER_CENT, 2) || shown > roundTo(band.max * PER_CENT, 2);
}

/** Share of all lines of one part in the bowl, or null while the total is unknown. */
function partFraction(mix: Mix, part: LinePart): number | null {
  if (!mix.totalG) return null;
  return (
    compensatedSum(mix.lines.filter((line) => line.part === part).map((line) => line.massG ?? 0)) / mix.totalG
  );
}

function bandNote(
  family: Family,
  what: string,
  fraction: number | null,
  band: Band | null,
): FormulaFinding[] {
  if (fraction === null || band === null || !isOutside(fraction, band)) return [];
  return [
    {
      id: 'formula.outside-band',
      severity: 'note',
      stage: 'formula',
      field: 'formula.familyId',
      basis: FAMILY_SOURCE,
      params: {
        what,
        family: family.name,
        valuePercent: fraction * PER_CENT,
        minPercent: fromBase(band.min, '%'),
        maxPercent: fromBase(band.max, '%'),
      },
    },
  ];
}

function namedNotes(family: Family, mix: Mix, facts: FormulaFacts): FormulaFinding[] {
  return family.named.flatMap((named): FormulaFinding[] => {
    if (named.compare === null) return [];
    const fraction = named.compare === 'liver' ? facts.liverFraction : mix.fat.fraction;
    if (fraction === null) return [];
    const band = { min: named.min ?? 0, max: named.max ?? 1 };
    if (!isOutside(fraction, band)) return [];
    return [
      {
        id: 'formula.named-share',
        severity: 'note',
        stage: 'formula',
        field: 'formula.familyId',
        basis: named.source,
        params: {
          name: named.name,
          what: named.what,
          valuePercent: fraction * PER_CENT,
          limitPercent: fromBase(fraction < band.min ? band.min : band.max, '%'),
          side: fraction < band.min ? 'least' : 'most',
        },
      },
    ];
  });
}

/** Where a mix leaves the habits of its family. Notes only: a range is no limit. */
export function familyNotes(family: Family | undefined, mix: Mix, facts: FormulaFacts): FormulaFinding[] {
  if (!family || !mix.totalG) return [];
  const parts = Object.entries(family.parts) as [LinePart, Band][];
  return [
    ...parts.flatMap(([part, band]) => bandNote(family, part, partFraction(mix, part), band)),
    ...bandNote(family, 'chemical-fat', mix.fat.fraction, family.chemicalFat),
    ...(family.saltOf === 'total' ? bandNote(family, 'salt', mix.salt.fraction, family.salt) : []),
    ...namedNotes(family, mix, facts),
  ];
}
