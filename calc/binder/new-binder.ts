import { blankEntry, defaultEntry } from '../quantities/index.ts';
import { PANADE_SHARE, panadeOf } from './panades.ts';
import type { BinderPart, BinderSlice, Extender, GarnishLine, PanadeKind } from './slice.ts';

/** No panade and no garnish yet; usual shares marked as defaults. Common practice, no source. */
export function newBinderSlice(): BinderSlice {
  return {
    meat: blankEntry('g'),
    panadeKind: 'none',
    panadeShare: defaultEntry(`${PANADE_SHARE.usual * 100}`, '%'),
    panadeParts: [],
    panadeLoss: blankEntry('%'),
    panadeCooked: blankEntry('g'),
    panadeTemp: blankEntry('C'),
    egg: defaultEntry('0', 'g'),
    eggIngredientId: 'kitchen-egg',
    cream: defaultEntry('0', 'g'),
    creamIngredientId: 'kitchen-cream-35',
    extenders: [],
    usNamedSausage: false,
    garnish: [],
    mouldWidth: blankEntry('mm'),
    mouldHeight: blankEntry('mm'),
    sliceThickness: defaultEntry('12', 'mm'),
  };
}

/** A part of a panade with nothing weighed. */
export function newBinderPart(id: string): BinderPart {
  return {
    id,
    name: '',
    ingredientId: null,
    amount: blankEntry('g'),
    salt: blankEntry('%'),
    water: blankEntry('%'),
  };
}

/** An extender with nothing weighed. */
export function newExtender(id: string): Extender {
  return { ...newBinderPart(id), kind: 'cereal-starch-milk' };
}

/** A garnish with nothing weighed. Density is a usual one, marked as a default. */
export function newGarnishLine(id: string): GarnishLine {
  return {
    id,
    name: '',
    ingredientId: null,
    asBought: blankEntry('g'),
    prepYield: defaultEntry('100', '%'),
    prepared: blankEntry('g'),
    salt: blankEntry('%'),
    water: blankEntry('%'),
    density: defaultEntry('1.05', 'g/mL'),
    shape: 'cube',
    pieceSize: defaultEntry('10', 'mm'),
    laidCount: blankEntry('count'),
    dried: false,
    rawAllium: false,
  };
}

/**
 * The slice with a panade of a kind for a cooked mass: parts and loss as usual, marked as defaults.
 * @param rawG raw mass of the whole panade; parts stay blank when it is null
 */
export function withPanade(slice: BinderSlice, kind: PanadeKind, rawG: number | null): BinderSlice {
  const { parts, lossFraction } = panadeOf(kind);
  const sum = parts.reduce((total, part) => total + part.parts, 0);
  return {
    ...slice,
    panadeKind: kind,
    panadeLoss: kind === 'none' ? blankEntry('%') : defaultEntry(`${Math.round(lossFraction * 100)}`, '%'),
    panadeParts: parts.map(({ name, ingredientId, parts: share }, index) => ({
      ...newBinderPart(`panade-${index + 1}`),
      name,
      ingredientId,
      amount:
        rawG === null
          ? blankEntry('g')
          : defaultEntry((Math.round((rawG * share * 10) / sum) / 10).toFixed(1), 'g'),
    })),
  };
}
