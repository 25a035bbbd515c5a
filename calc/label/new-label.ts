import { blankEntry, defaultEntry } from '../quantities/index.ts';
import type { LabelExtra, LabelLine, LabelSlice, TypedFigures } from './slice.ts';

function blankFigures(): TypedFigures {
  return {
    saturates: blankEntry('%'),
    carbohydrate: blankEntry('%'),
    sugars: blankEntry('%'),
    fibre: blankEntry('%'),
    alcohol: blankEntry('%'),
  };
}

/** What a label says of a formula line nobody has looked at yet. */
export function newLabelLine(lineId: string): LabelLine {
  return {
    id: lineId,
    name: '',
    madeOf: '',
    allergens: null,
    stressed: false,
    collagen: blankEntry('%'),
    collagenCut: null,
    figures: blankFigures(),
  };
}

/** A crust, jelly or seal nobody has weighed yet. */
export function newLabelExtra(id: string): LabelExtra {
  return {
    id,
    name: '',
    mass: blankEntry('g'),
    madeOf: '',
    allergens: null,
    figures: { ...blankFigures(), fat: blankEntry('%'), protein: blankEntry('%'), salt: blankEntry('%') },
  };
}

/**
 * An empty label. Five days from the cook at 3 °C or colder are defaults of common practice, short on purpose; the
 * plan of the kitchen sets the real ones.
 */
export function newLabelSlice(): LabelSlice {
  return {
    market: null,
    name: '',
    maker: '',
    origin: '',
    lines: [],
    extras: [],
    filled: blankEntry('g'),
    loss: null,
    drainedFat: blankEntry('g'),
    alcohol: null,
    serving: defaultEntry('55', 'g'),
    netWeight: blankEntry('g'),
    pack: null,
    hurdle: null,
    storeAt: defaultEntry('3', 'C'),
    dateKind: 'use-by',
    life: defaultEntry('5', 'd'),
    cookDayCounts: true,
    cookedOn: '',
    packedOn: '',
    audience: null,
    looksLikeCut: false,
  };
}
