import { mixForFillG } from '../formula/index.ts';

/** What is lost on the way. Every share is of what was there before that step, and they multiply. */
export interface Losses {
  /** Taken out of the mix, g. */
  readonly testG: number;
  /** Left on bowl and filler, of the mix without the test. */
  readonly residueFraction: number;
  /** Of the fill. */
  readonly cookLossFraction: number;
  /** Ends and crumbs, of the finished mass. */
  readonly endLossFraction: number;
}

/** Where the mass goes, g. Mix = test + residue + fill; fill = cook loss + finished; finished = ends + servable. */
export interface MassFlow {
  readonly mixG: number;
  readonly testG: number;
  readonly residueG: number;
  readonly fillG: number;
  readonly cookLossG: number;
  readonly finishedG: number;
  readonly endLossG: number;
  readonly servableG: number;
}

function isUsable(losses: Losses): boolean {
  const { testG, residueFraction, cookLossFraction, endLossFraction } = losses;
  const fractions = [residueFraction, cookLossFraction, endLossFraction];
  return testG >= 0 && Number.isFinite(testG) && fractions.every((loss) => loss >= 0 && loss < 1);
}

/**
 * Everything from the fill, both ways. Null for input that is no mass or share.
 * Derived: mass balance, losses one after the other.
 */
export function flowFromFill(fillG: number, losses: Losses): MassFlow | null {
  if (!isUsable(losses) || !(fillG > 0) || !Number.isFinite(fillG)) return null;
  const { testG, residueFraction, cookLossFraction, endLossFraction } = losses;
  const mixG = mixForFillG({ fillG, testPoachG: testG, residueFraction });
  if (mixG === null) return null;
  const cookLossG = fillG * cookLossFraction;
  const finishedG = fillG - cookLossG;
  const endLossG = finishedG * endLossFraction;
  return {
    mixG,
    testG,
    residueG: mixG - testG - fillG,
    fillG,
    cookLossG,
    finishedG,
    endLossG,
    servableG: finishedG - endLossG,
  };
}

/**
 * The same from the finished mass: fill = finished ÷ (1 − cook loss).
 * @example flowFromFinished(920, { testG: 0, residueFraction: 0, cookLossFraction: 0.08, endLossFraction: 0 })?.fillG // 1000
 */
export function flowFromFinished(finishedG: number, losses: Losses): MassFlow | null {
  return isUsable(losses) ? flowFromFill(finishedG / (1 - losses.cookLossFraction), losses) : null;
}

/**
 * The same from what is served: finished = portions × portion ÷ (1 − ends).
 * @example 40 × 70 g with 3 % ends, 8 % cook loss, 2 % residue and 50 g test takes 3,251.6 g of mix
 */
export function flowFromServed(servedG: number, losses: Losses): MassFlow | null {
  return isUsable(losses) ? flowFromFinished(servedG / (1 - losses.endLossFraction), losses) : null;
}
