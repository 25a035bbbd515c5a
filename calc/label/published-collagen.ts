import type { SourceId } from '../sources/index.ts';
import type { MeatClass } from './meat-content.ts';

/** A cut whose collagen somebody measured and published. */
export interface PublishedCollagen {
  readonly id: string;
  readonly name: string;
  readonly meatClass: MeatClass;
  /** Share of the cut, or of its fat-free part. Of several published means the highest: it never flatters the meat. */
  readonly fraction: number;
  readonly of: 'cut' | 'fat-free';
  readonly source: SourceId;
}

const cut = (
  id: string,
  name: string,
  meatClass: MeatClass,
  fraction: number,
  of: PublishedCollagen['of'],
): PublishedCollagen => ({
  id,
  name,
  meatClass,
  fraction,
  of,
  source: of === 'cut' ? 'pork-belly-and-butt-2021' : 'collagen-of-cuts-1986',
});

/**
 * Collagen of cuts as published. Collagen of one animal differs a great deal from that of the next: an analysis of
 * your own meat outranks all of these.
 *
 * Hoa and others, Food Science of Animal Resources 41 (2), 2021, table 2: belly 2.65 to 2.82 %, shoulder butt 2.50 to
 * 2.61 %. Meat Science 12, 1986, abstract: per cent of the wet, fat-free meat.
 */
export const PUBLISHED_COLLAGEN: readonly PublishedCollagen[] = [
  cut('pork-belly', 'Pork belly', 'pork', 0.0282, 'cut'),
  cut('pork-butt', 'Pork shoulder butt', 'pork', 0.0261, 'cut'),
  cut('pork-carcass', 'Pork, the whole side', 'pork', 0.023, 'fat-free'),
  cut('pork-hand', 'Pork hand (picnic)', 'pork', 0.029, 'fat-free'),
  cut('beef-forequarter', 'Beef forequarter', 'mammal', 0.032, 'fat-free'),
  cut('beef-hindquarter', 'Beef hindquarter', 'mammal', 0.027, 'fat-free'),
  cut('beef-shin', 'Beef shin', 'mammal', 0.048, 'fat-free'),
  cut('beef-leg', 'Beef leg', 'mammal', 0.042, 'fat-free'),
];

/** The cut of that id. */
export function publishedCollagenOf(id: string | null): PublishedCollagen | undefined {
  return PUBLISHED_COLLAGEN.find((item) => item.id === id);
}

/**
 * Collagen of a meat by a published cut, share of the meat.
 * @param fatFraction of the meat itself; needed where the published figure is for fat-free meat
 */
export function collagenByCut(item: PublishedCollagen, fatFraction: number | null): number | null {
  if (item.of === 'cut') return item.fraction;
  return fatFraction === null ? null : item.fraction * (1 - fatFraction);
}
