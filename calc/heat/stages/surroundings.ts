import type { Exchange, Surroundings } from '../solve/around.ts';
import type { Contact, Network } from '../solve/network.ts';
import { bathBalance, bathHeatJK } from './bath.ts';
import { courseAt, type HeatStage, type Medium } from './stage.ts';

/** Media are numbered: air, water, then one for each face with a medium of its own. */
const AIR = 0;
const WATER = 1;

/** Turns a stage into what the network meets, its times counted from `startS`. */
export function surroundingsOf(network: Network, stage: HeatStage, startS: number): Surroundings {
  const { air, water, faces = {}, cover = {} } = stage;
  const own = Object.values(faces).filter((medium): medium is Medium => medium !== 'closed');
  const exchanges: Exchange[] = [];
  for (const contact of network.contacts) {
    const { node, face, areaM2 } = contact;
    const resistance = contact.resistance + (cover[face] ?? 0);
    const add = (medium: number, share: number, film: number) => {
      if (share <= 0 || film <= 0) return;
      exchanges.push({ node, medium, conductance: (share * areaM2) / (resistance + 1 / film) });
    };
    const special = faces[face];
    if (special === 'closed') continue;
    if (special !== undefined) {
      add(WATER + 1 + own.indexOf(special), 1, special.filmWm2K);
      continue;
    }
    const wet = water === undefined ? 0 : wetShare(contact, water.levelMm / 1000);
    add(AIR, 1 - wet, air.filmWm2K);
    if (water !== undefined) add(WATER, wet, water.filmWm2K);
  }

  const minutes = (timeS: number) => (timeS - startS) / 60;
  const bath = water?.bath;
  const covered = bath?.kind === 'oven' && bath.pan.covered;
  const media = (timeS: number, bathC: number, into: Float64Array) => {
    const at = minutes(timeS);
    const waterC = bath === undefined || bath.kind === 'oven' ? bathC : courseAt(bath.tempC, at);
    // Under a cover the space over the water is steam at the temperature of the bath.
    into[AIR] = covered ? bathC : courseAt(air.tempC, at);
    if (into.length > WATER) into[WATER] = waterC;
    for (const [index, medium] of own.entries()) {
      if (into.length > WATER + 1 + index) into[WATER + 1 + index] = courseAt(medium.tempC, at);
    }
  };
  const balance = bath?.kind === 'oven' ? bathBalance(bath.pan) : null;
  const bathRate =
    balance === null
      ? null
      : (timeS: number, bathC: number, loadW: number) =>
          balance(courseAt(air.tempC, minutes(timeS)), bathC, loadW);
  return {
    exchanges,
    media,
    bathRate,
    bathMedium: WATER,
    bathHeatJK: bath?.kind === 'oven' ? bathHeatJK(bath.pan) : 0,
    atBath: bath?.kind !== 'oven' ? [] : covered ? [AIR, WATER] : [WATER],
  };
}

/**
 * Share of a contact that is under water, 0–1. A node speaks for the wall as far as the next nodes, by the straight
 * line that falls from it to them: so the place of the water line counts, and not only how much of a cell is wet.
 */
function wetShare({ lowM, highM, atM }: Contact, levelM: number): number {
  if (highM <= lowM) return lowM < levelM || (lowM === 0 && levelM > 0) ? 1 : 0;
  const [below, above] = [atM - lowM, highM - atM];
  const under = below > 0 ? between0and1((levelM - atM + 2 * below) / (2 * below)) ** 2 : 0;
  const over = above > 0 ? 1 - between0and1((atM + 2 * above - levelM) / (2 * above)) ** 2 : 0;
  return (below * under + above * over) / (highM - lowM);
}

const between0and1 = (value: number) => Math.min(1, Math.max(0, value));
