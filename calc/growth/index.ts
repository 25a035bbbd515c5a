export { type CardinalTemperatures, cardinalRatePerH } from './cardinal-temperature.ts';
export { type ByFoodCode, byFoodCode } from './food-code-tables.ts';
export { grow, logOfRelativeGrowth, type Population } from './grow.ts';
export {
  type CoolingGrowth,
  type GrowthDoubt,
  type GrowthFacts,
  growthFacts,
  growthInCooling,
  type LogGrowth,
  productDoubt,
  type SetGrowth,
  setGrowth,
} from './in-cooling.ts';
export {
  daysToHundredfold,
  LISTERIA_RANGE_C,
  type ListeriaGrowth,
  listeriaGrowth,
  type PerfringensStays,
  perfringensInStorage,
  type Stay,
} from './in-storage.ts';
export { lagH, physiologicalState, readyFraction, workOfGenerations } from './lag.ts';
export { type ListeriaByProduct, listeriaByProduct, type MeasuredProduct } from './listeria-by-product.ts';
export {
  LACTIC_2013,
  LISTERIA_2009,
  type ProductFactors,
  type ProductRate,
  type ProductState,
  productRate,
} from './product-factors.ts';
export {
  type GrowthSet,
  LIGHTLY_SALTED_FRACTION,
  LISTERIA_GROUPS,
  LISTERIA_SOURCE,
  type ListeriaGroup,
  PERFRINGENS_COUNTS,
  PERFRINGENS_LAG_WORK,
  PERFRINGENS_SETS,
  PERFRINGENS_SOURCE,
} from './published.ts';
export { type GrowthPoint, rateIntegral } from './rate-integral.ts';
export {
  measuredOf,
  newMeasured,
  newStay,
  newStorageSlice,
  type StorageSlice,
  type StorageStay,
  staysOf,
} from './slice.ts';
export {
  logsPerDayAt5C,
  refrigeratorLogsPerDay,
  type SquareRootLine,
  squareRootRatePerH,
} from './square-root.ts';
