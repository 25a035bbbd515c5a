import type { Params } from '@larderwright/calc/findings';
import type { PressFindingId } from '@larderwright/calc/press';
import { fixedText } from '@larderwright/calc/quantities';
import type { Words } from './wording.ts';

const kPa = (p: Params, key: string) => fixedText(Number(p[key]), 1);
const area = (p: Params, key: string) => fixedText(Number(p[key]) / 100, 0);

/** The words of every finding on the press. */
export const pressWords = {
  'press.below-band': (p) => ({
    title: `${fixedText(Number(p.kPa), 2)} kPa is a light press for this product.`,
    body: `Usual is ${kPa(p, 'lowKPa')} to ${kPa(p, 'highKPa')} kPa. The slice may be loose.`,
  }),
  'press.above-band': (p) => ({
    title: `${fixedText(Number(p.kPa), 2)} kPa is a heavy press for this product.`,
    body: `Usual is ${kPa(p, 'lowKPa')} to ${kPa(p, 'highKPa')} kPa. Juice and fat may be squeezed out.`,
  }),
  'press.not-pressed': () => ({
    title: 'This product is not pressed.',
    body: 'Level the top and leave it.',
  }),
  'press.box-only': (p) => ({
    title: `${fixedText(Number(p.kPa), 1)} kPa is more than weights on a board are for.`,
    body: `Above ${kPa(p, 'highestKPa')} kPa use a spring or lidded box rated for it. Do not improvise.`,
  }),
  'press.board-too-large': (p) => ({
    title: 'The board is larger than the fill.',
    body: `It would rest on the mould: ${area(p, 'boardAreaMm2')} cm² against ${area(p, 'planAreaMm2')} cm². Cut it 2–3 mm smaller all round.`,
  }),
  'press.slows-cooling': () => ({
    title: 'A press slows cooling.',
    body: 'Start the chill first or press inside the chiller, and log the core.',
  }),
} satisfies Words<PressFindingId>;
