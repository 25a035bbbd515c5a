import {
  BLEND_QUALITIES,
  type BlendQuality,
  type BlendSlice,
  type BlendValues,
} from '@larderwright/calc/blend';
import type { Verdict } from '@larderwright/calc/findings';
import { namedStandardOf } from '@larderwright/calc/formula';
import { type Entry, fixedText } from '@larderwright/calc/quantities';
import * as say from '#words/lean-and-fat/card-model.ts';
import { filled, worked } from '../batch-sheet/build/filled.ts';
import { sheetVerdicts } from '../batch-sheet/build/verdicts.ts';
import type { Filled, SheetVerdict } from '../batch-sheet/sheet-model.ts';
import { percentText } from '../parts/number-text.ts';
import { standardLimitText } from '../words/blend.ts';
import { moneyText } from '../words/money.ts';

/** A material on the card. */
export interface MaterialRow {
  readonly id: string;
  readonly name: string;
  readonly fat: Filled | null;
  readonly protein: Filled | null;
  readonly water: Filled | null;
  readonly price: Filled | null;
  readonly stock: Filled | null;
  readonly share: string | null;
  readonly fixed: Filled | null;
  readonly square: Filled | null;
}

/** How a blend stands to the standard of its name, as it prints. */
export interface StandardOnPaper {
  readonly stops: readonly string[];
  readonly verdicts: readonly SheetVerdict[];
}

/** A broken standard is printed above all else: it is the name that must go. */
export function standardOnPaper(verdicts: readonly Verdict[]): StandardOnPaper {
  const all = sheetVerdicts(verdicts);
  return { stops: all.filter(({ state }) => state === 'fail').map(({ title }) => title), verdicts: all };
}

/** The card of a blend as plain words and numbers. Null prints as a box to write in. */
export interface BlendCardModel {
  readonly total: Filled | null;
  readonly fatTarget: Filled | null;
  /** The name it is sold under, the limits of that name, and the finished weight. */
  readonly soldUnder: string | null;
  readonly limits: string | null;
  readonly yield: Filled | null;
  readonly standard: StandardOnPaper;
  readonly rows: readonly MaterialRow[];
  readonly bands: Readonly<Record<BlendQuality, string | null>>;
  readonly square: Readonly<Record<'fat' | 'protein' | 'water' | 'ratio' | 'cost', Filled | null>>;
}

function made(text: string | null): Filled | null {
  return text === null ? null : { text, flag: 'W' };
}

const percent = (fraction: number | null) => made(fraction === null ? null : percentText(fraction, 1));

function bandText(kind: 'fraction' | 'ratio', min: Entry, max: Entry): string | null {
  const unit = kind === 'ratio' ? 'ratio' : '%';
  const [low, high] = [filled(kind, min, unit), filled(kind, max, unit)];
  if (low === null && high === null) return null;
  return say.to(low?.text ?? say.any, high?.text ?? say.any);
}

/** The card of a blend. */
export function blendCard(
  slice: BlendSlice,
  values: BlendValues,
  verdicts: readonly Verdict[],
  currency: string,
): BlendCardModel {
  const { squareMakeup: makeup, squareCost } = values;
  const standard = namedStandardOf(slice.standard?.nameId ?? null);
  return {
    soldUnder: standard?.name ?? null,
    limits: standard ? standard.limits.map(standardLimitText).join('; ') : null,
    yield: slice.standard ? filled('fraction', slice.standard.yield, '%') : null,
    standard: standardOnPaper(verdicts),
    total: filled('mass', slice.total, 'kg'),
    fatTarget: filled('fraction', slice.fatTarget, '%'),
    rows: values.lines.flatMap((line) => {
      const material = slice.materials.find(({ id }) => id === line.materialId);
      if (!material) return [];
      // The column says %.
      const flag = (entry: Entry, fraction: number | null): Filled | null => {
        const figure = made(fraction === null ? null : fixedText(fraction * 100, 1));
        return figure && entry.text.trim() !== '' ? { ...figure, flag: 'E' } : figure;
      };
      const price = filled('money', material.price, 'money');
      const mass = values.squareMasses.find(({ materialId }) => materialId === line.materialId);
      return {
        id: line.materialId,
        name: line.name || say.unnamedMaterial,
        fat: flag(material.declared.fat, line.fatFraction),
        protein: flag(material.declared.protein, line.proteinFraction),
        water: flag(material.declared.water, line.waterFraction),
        price: price && { ...price, text: `${price.text} / ${material.priceBasis}` },
        stock: filled('mass', material.stock, 'kg'),
        share: bandText('fraction', material.minShare, material.maxShare),
        fixed: filled('mass', material.locked, 'kg'),
        square: worked(mass?.massG ?? null),
      };
    }),
    bands: Object.fromEntries(
      BLEND_QUALITIES.map((quality) => {
        const { min, max } = slice.bands[quality];
        return [quality, bandText(quality === 'water-to-protein' ? 'ratio' : 'fraction', min, max)];
      }),
    ) as Record<BlendQuality, string | null>,
    square: {
      fat: percent(makeup?.fat ?? null),
      protein: percent(makeup?.protein ?? null),
      water: percent(makeup?.water ?? null),
      ratio: made(makeup?.waterToProtein == null ? null : `${fixedText(makeup.waterToProtein, 2)} : 1`),
      cost: made(squareCost === null ? null : moneyText(squareCost, currency)),
    },
  };
}
