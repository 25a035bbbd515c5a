import * as say from '#words/gelee/blank-blocks.ts';
import type { CardBlock } from '../parts/card-blocks.tsx';

/** Proof that it sets, before it goes anywhere. */
export const PLATE_TEST: CardBlock = {
  title: say.plateTestSpoonfulColdPlate,
  table: {
    columns: [say.time, say.plateC, say.minutes, say.runsHoldsCutsClean, say.gelatineOrStockAddedG, say.by],
    rows: [],
    blankRows: 3,
  },
};

/** Jelly poured round or into something cooked. */
export const POURS: CardBlock = {
  title: say.pouringCore40C104F,
  rows: [
    [
      { label: say.roomInsideTheCrusts, unit: 'mL' },
      { label: say.jellyForIt, unit: 'mL' },
      { label: say.jellyWhenPoured, unit: '°C' },
      { label: say.coreWhenPoured, unit: '°C' },
    ],
  ],
  table: {
    columns: [say.go, say.time, say.jellyC, say.coreBeforeC, say.coreAfterC, 'mL', say.by],
    rows: [],
    blankRows: 3,
  },
  lines: [say.coolingClockDoesNotStopWarm],
};

/** A jelly to write on by hand. */
export const BLANK_JELLY: readonly CardBlock[] = [
  {
    title: say.whatIsSet,
    rows: [
      [
        { label: say.product, wide: true },
        { label: say.kitchen, wide: true },
        { label: say.liquid, unit: 'mL' },
      ],
      [
        { label: say.forWord, wide: true },
        { label: say.setWith },
        { label: say.strengthGTo100Ml, unit: '%' },
        { label: say.toldForBloom },
      ],
    ],
  },
  {
    title: say.gelatineAtHand,
    rows: [
      [
        { label: say.formOrGrade, wide: true },
        { label: say.bloom },
        { label: say.oneSheet, unit: 'g' },
        { label: say.madeOf },
        { label: say.ruleBetweenBlooms, wide: true },
      ],
    ],
  },
  {
    title: say.whatChangesTheSet,
    rows: [
      [
        { label: say.stockSetsByItself, unit: '%' },
        { label: 'pH' },
        { label: say.alcoholByVolume, unit: '%' },
        { label: say.sugar, unit: '%' },
        { label: say.rawFruitInIt, wide: true },
      ],
    ],
  },
  {
    title: say.toWeigh,
    rows: [
      [
        { label: say.byTheSquareRoot, unit: 'g' },
        { label: say.byTheLinearRule, unit: 'g' },
        { label: say.toWeigh, unit: 'g' },
        { label: say.inSheets },
      ],
      [
        { label: say.soakInWater, unit: 'g' },
        { label: say.weighed, unit: 'g' },
        { label: say.lot },
        { label: say.by },
      ],
    ],
  },
  PLATE_TEST,
  POURS,
];
