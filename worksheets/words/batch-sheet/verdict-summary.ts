import { plural } from '../plural.ts';

export const noteSOnQualityAndRecord = (length: number) =>
  `${length} note${plural(length, { one: '', other: 's' })} on quality and record`;
