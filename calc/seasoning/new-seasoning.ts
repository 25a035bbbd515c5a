import { blankEntry, defaultEntry } from '../quantities/index.ts';
import type { BlendStyle } from './blend-styles.ts';
import type { BlendItem, LooseSpice, SeasoningBlend, SeasoningSlice } from './slice.ts';

/** Nothing seasoned yet. Readability and loss are usual values, marked as defaults. Common practice, no source. */
export function newSeasoningSlice(): SeasoningSlice {
  return {
    batch: blankEntry('kg'),
    blends: [],
    loose: [],
    scaleReadability: defaultEntry('0.1', 'g'),
    diluteInSalt: true,
    grindingLoss: defaultEntry('3', '%'),
    timesTasted: defaultEntry('1', 'ratio'),
  };
}

/** A blend without spices, at the usual dose. */
export function newSeasoningBlend(id: string): SeasoningBlend {
  return {
    id,
    name: '',
    items: [],
    dose: defaultEntry('3', 'g/kg'),
    stockTimes: defaultEntry('1', 'ratio'),
    groundOn: '',
  };
}

/** A spice of a blend with nothing written down. */
export function newBlendItem(id: string): BlendItem {
  return {
    id,
    spiceId: null,
    name: '',
    form: 'ground',
    parts: blankEntry('ratio'),
    salt: blankEntry('%'),
  };
}

/** A seasoning added by itself, with nothing written down. */
export function newLooseSpice(id: string): LooseSpice {
  return { id, spiceId: null, name: '', form: 'ground', dose: blankEntry('g/kg'), salt: blankEntry('%') };
}

/**
 * A blend begun from one of the teaching styles, its parts and the middle of its dose marked as defaults. A brine's dose is
 * by the litre and is left blank here.
 * @param itemIds one id for each spice of the style, in its order; missing ones are numbered
 */
export function blendOfStyle(id: string, style: BlendStyle, itemIds: readonly string[] = []): SeasoningBlend {
  const middle = (style.doseGPerUnit.min + style.doseGPerUnit.max) / 2;
  return {
    ...newSeasoningBlend(id),
    dose: style.unit === 'g/kg' ? defaultEntry(`${middle}`, 'g/kg') : blankEntry('g/kg'),
    items: style.parts.map(({ spiceId, form, parts }, index) => ({
      ...newBlendItem(itemIds[index] ?? `${id}-${index + 1}`),
      spiceId,
      form,
      parts: defaultEntry(`${parts}`, 'ratio'),
    })),
  };
}
