import type { WholeMuscleFinish, WholeMuscleProduct } from '@larderwright/calc/dry-cure';

/** What is cured, as laws part it. */
export const PRODUCT_NAMES: Readonly<Record<WholeMuscleProduct, string>> = {
  bacon: 'Bacon: belly or side',
  ham: 'Ham or shoulder',
  other: 'Another whole muscle',
};

/** How it is eaten. */
export const FINISH_NAMES: Readonly<Record<WholeMuscleFinish, string>> = {
  cooked: 'Cooked here, eaten as it is',
  'cook-before-eating': 'Sold raw, cooked before eating',
  'dried-raw': 'Dried and eaten raw (specialist)',
};

/** Choices from names. */
export const choicesOf = (names: Readonly<Record<string, string>>) =>
  Object.entries(names).map(([value, label]) => ({ value, label }));
