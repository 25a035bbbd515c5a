import type { FileOven } from '@larderwright/calc/exchange';

/** An oven record of a file, set against those of this device. */
export interface IncomingOven {
  /** Place in the file, from 1. */
  readonly place: number;
  readonly oven: FileOven;
  readonly state: 'new' | 'same' | 'differs';
  readonly taken: boolean;
}

const sameOven = (a: FileOven, b: FileOven) =>
  a.name === b.name &&
  a.filmFactor === b.filmFactor &&
  a.heatingFactor === b.heatingFactor &&
  a.mediumShiftC === b.mediumShiftC;

/** What is the same is left out, what differs is taken in beside the one that is here, until a person says otherwise. */
export function compareOvens(ovens: readonly FileOven[], here: readonly FileOven[]): IncomingOven[] {
  const known = [...here];
  return ovens.map((oven, index) => {
    const same = known.some((each) => sameOven(each, oven));
    const named = known.some(({ name }) => name === oven.name);
    known.push(oven);
    const state = same ? 'same' : named ? 'differs' : 'new';
    return { place: index + 1, oven, state, taken: !same };
  });
}
