import type { Band, Family, LinePart, Mix } from '@larderwright/calc/formula';
import { fixedText, plainText } from '@larderwright/calc/quantities';
import * as phrases from '#words/batch-formula/family-rows.ts';
import { percentText } from '../parts/number-text.ts';
import { PART_NAMES } from '../words/line-parts.ts';

/** One usual range of a family, and what this mix has of it where that can be told. */
export interface FamilyRow {
  readonly what: string;
  readonly usually: string;
  readonly here: string | null;
}

function bandText({ min, max, usual }: Band): string {
  const range = `${fixedText(min * 100, 1)}–${fixedText(max * 100, 1)} %`;
  return usual === undefined ? range : phrases.often(range, fixedText(usual * 100, 2));
}

const doseText = ([min, max]: readonly [min: number, max: number]) =>
  `${plainText(min)}–${plainText(max)} g/kg`;
const shareText = (fraction: number | null) => (fraction === null ? null : percentText(fraction));

/** All lines of a part together, of everything in the bowl; null while any of it is not known. */
function partFraction(mix: Mix, part: LinePart): number | null {
  const shares = mix.lines.filter((line) => line.part === part).map(({ ofTotalFraction }) => ofTotalFraction);
  if (mix.totalG === null || shares.includes(null)) return null;
  return shares.reduce<number>((sum, share) => sum + (share ?? 0), 0);
}

function nitriteText({ minPpm, maxPpm, optional, of }: NonNullable<Family['nitrite']>): string {
  return phrases.mgKgOf(plainText(minPpm), plainText(maxPpm), of, optional ? phrases.orNone : '');
}

/** The usual ranges of a family beside a mix: parts, fat, salt, then what is only said of it. */
export function familyRows(family: Family, mix: Mix | null): FamilyRow[] {
  const rows: FamilyRow[] = [];
  for (const part of Object.keys(PART_NAMES) as LinePart[]) {
    const band = family.parts[part];
    if (!band) continue;
    rows.push({
      what: PART_NAMES[part],
      usually: bandText(band),
      here: mix ? shareText(partFraction(mix, part)) : null,
    });
  }
  const { chemicalFat, salt, saltOf, nitrite, sugar, pepperGPerKg, spiceGPerKg, spirit, gelatine } = family;
  const say = (what: string, usually: string | null, here: string | null = null) => {
    if (usually !== null) rows.push({ what, usually, here });
  };
  say(
    phrases.fatALaboratoryWouldFind,
    chemicalFat && bandText(chemicalFat),
    shareText(mix?.fat.fraction ?? null),
  );
  // Salt counted on the finished product or on the meat cannot be compared with salt in the bowl.
  const saltHere = saltOf === 'total' ? shareText(mix?.salt.fraction ?? null) : null;
  say(
    saltOf === 'total' ? phrases.saltFromAllSources : phrases.saltOfThe(saltOf),
    salt && bandText(salt),
    saltHere,
  );
  say(phrases.nitriteAsSodiumNitrite, nitrite && nitriteText(nitrite));
  say(phrases.sugar, sugar && bandText(sugar));
  say(phrases.pepper, pepperGPerKg && doseText(pepperGPerKg));
  say(phrases.spices, spiceGPerKg && doseText(spiceGPerKg));
  say(phrases.spiritOrFortifiedWineUnreduced, spirit && bandText(spirit));
  say(phrases.gelatineOfThe(gelatine?.of), gelatine && bandText(gelatine.band));
  return rows;
}
