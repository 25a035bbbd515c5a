import type { DryCureFindingId } from '@larderwright/calc/dry-cure';
import { number, percent, piece, sharedMuscleWords } from './whole-muscle.ts';
import type { Words } from './wording.ts';

/** The words of every finding and verdict of dry cure. */
export const dryCureWords = {
  ...sharedMuscleWords('dry-cure'),
  'dry-cure.skin-estimated': (p) => ({
    title: `${piece(p)}counted on ${number(p, 'greenG', 0)} g, the weight less a tenth for skin.`,
    body: 'Skin takes up no cure to speak of. Weigh the piece without skin if you can.',
  }),
  'dry-cure.salt-outside-habit': (p) => ({
    title: `${percent(p, 'saltFraction', 2)} salt on the meat is unusual.`,
    body: `Most cures at equilibrium hold ${percent(p, 'lowFraction')} to ${percent(p, 'highFraction')}.`,
  }),
  'dry-cure.cure-brings-too-much-salt': (p) => ({
    title: `Stop: ${piece(p)}the curing salt alone brings ${number(p, 'overG', 1)} g more salt than is wanted.`,
    body: 'With a weak pack, salt and nitrite are one lever. Lower the nitrite target or raise the salt.',
  }),
  'dry-cure.thick': (p) => ({
    title: `${piece(p)}${number(p, 'thicknessMm', 0)} mm is thick for a dry cure.`,
    body: `Over ${number(p, 'thickMm', 0)} mm the middle stays uncured for weeks. Open it up, or inject it.`,
  }),
  'dry-cure.thumb-rule-outside-range': (p) => ({
    title: `${piece(p)}the rule of a day to 6 mm and two more is not made for ${number(p, 'thicknessMm', 0)} mm.`,
    body: `It is meant for ${number(p, 'lowMm', 0)} to ${number(p, 'highMm', 0)} mm.`,
  }),
  'dry-cure.nitrite-lags': () => ({
    title: 'Nitrite goes in more slowly than salt.',
    body: 'It reacts with the meat on its way. The days below are for salt.',
  }),
  'dry-cure.dried-specialist': () => ({
    title: 'Stop: dried meat that is eaten raw needs an accepted process.',
    body: 'Have the plan accepted by your authority or a process specialist. Do not sell on the strength of a worksheet.',
  }),
  'dry-cure.time-is-guidance': (p) => ({
    title: `${piece(p)}about ${number(p, 'lowDays', 0)} to ${number(p, 'highDays', 0)} days.`,
    body: 'The longest of the rules of thumb and of two diffusion estimates. Guidance only: a salt analysis decides.',
  }),
} satisfies Words<DryCureFindingId>;
