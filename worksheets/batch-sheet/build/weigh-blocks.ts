import { type Assessment, type Batch, isWholeMuscle } from '@larderwright/calc/batch';
import type { LiningKind, MouldFill } from '@larderwright/calc/mould';
import { fixedText, formatQuantity } from '@larderwright/calc/quantities';
import * as say from '#words/batch-sheet/build/weigh-blocks.ts';
import { LINING_NAMES } from '../../words/mould-names.ts';
import type { CureBlock, FillBlock, PreStart, SaltBlock } from '../sheet-model.ts';
import { filled, percent, words, worked } from './filled.ts';
import { sheetVerdicts } from './verdicts.ts';
import { cureElsewhere, saltElsewhere } from './whole-muscle.ts';

/** Boxes for moulds when nobody has said how many there are. */
const BLANK_MOULDS = 8;

export function buildPreStart(batch: Batch): PreStart {
  const [first] = batch.process.logs;
  const probes = batch.process.logs.map((log) => log.probeName.trim()).filter(Boolean);
  return {
    probes: probes.length > 0 ? probes.join(', ') : null,
    probeError: first ? filled('temperature-difference', first.error, 'dC') : null,
    scaleStep: filled('mass', batch.cure.scaleReadability, 'g'),
  };
}

/** The cure line; null when the batch holds no curing salt, so that the box prints empty. */
export function buildCure(batch: Batch, assessment: Assessment): CureBlock | null {
  const { cure, formula } = assessment;
  const lines = batch.formula.lines.filter((line) => line.part === 'curing-salt');
  const isMuscle = isWholeMuscle(batch);
  if (lines.length === 0 && !isMuscle) return null;
  const massOf = new Map(formula.values.planned.lines.map((line) => [line.lineId, line.massG]));
  const { nitritePpmMeat, nitritePpmTotal, nitriteIonPpmMeat, nitriteIonPpmTotal, inUse } = cure.values;
  const ppm = (value: number | null) => (value === null ? say.cannotTell : fixedText(value, 1, 'up'));
  const basis = inUse === 'as-weighed' ? say.asWeighed : say.asPlanned;
  const weighed = lines.map((line) => ({
    name: words(line.name) ?? say.curingSalt,
    strength: line.cure ? filled('fraction', line.cure.nitrite, '%') : null,
    grams:
      line.basis === 'mass' ? filled('mass', line.amount, 'g') : worked(massOf.get(line.id) ?? null, true),
    actual: filled('mass', line.actual, 'g'),
    lot: words(line.lot),
  }));
  if (isMuscle) return cureElsewhere(batch, assessment, weighed);
  return {
    lines: weighed,
    ppm:
      say.mgKgMeatBlockTotalSodium(basis, ppm(nitritePpmMeat), ppm(nitritePpmTotal)) +
      say.andAsIon(ppm(nitriteIonPpmMeat), ppm(nitriteIonPpmTotal)),
    weighedBy: words(batch.cure.weighedBy),
    checkedBy: words(batch.cure.checkedBy),
    verdicts: sheetVerdicts(cure.verdicts),
  };
}

export function buildSalt(batch: Batch, assessment: Assessment): SaltBlock {
  const { mix, lined } = assessment.formula.values;
  const elsewhere = saltElsewhere(batch, assessment);
  if (elsewhere !== null)
    return { target: null, total: null, onWater: null, sources: null, lined: null, elsewhere };
  const sources = mix.salt.contributions
    .filter((source) => source.grams !== null && source.grams >= 1)
    .toSorted((a, b) => (b.grams ?? 0) - (a.grams ?? 0))
    .slice(0, 4)
    .map((source) => `${source.name} ${fixedText(source.grams ?? 0, 1)} g`);
  return {
    target: batch.formula.lines.length > 0 ? filled('fraction', batch.formula.saltTarget, '%') : null,
    total: percent(mix.salt.fraction),
    onWater: percent(mix.saltOnWaterFraction),
    sources: sources.length > 0 ? say.from(sources.join(', ')) : null,
    lined: lined === null ? null : say.withTheLiningAsSliced(percent(lined.salt.fraction) ?? '______ %'),
  };
}

/** "fat, sheet 380 × 480 mm, about 242 g"; a thing to weigh is told as weighed. */
function liningText(kind: LiningKind, fill: MouldFill | undefined): string | null {
  if (kind === 'none') return null;
  const sheet = fill?.liningSheetMm;
  return [
    LINING_NAMES[kind].toLowerCase(),
    sheet ? say.sheetMm(fixedText(sheet.acrossMm, 0, 'up'), fixedText(sheet.alongMm, 0, 'up')) : null,
    fill?.fatLiningG ? say.aboutG(fixedText(fill.fatLiningG, 0, 'up')) : null,
  ]
    .filter((part) => part !== null)
    .join(', ');
}

export function buildFill(batch: Batch, { mould }: Assessment): FillBlock {
  const fills = new Map(mould.values.moulds.map((each) => [each.id, each]));
  const moulds = batch.mould.moulds.map((each) => {
    const grams = fills.get(each.id)?.fillG ?? null;
    return {
      id: each.id,
      name: words(each.name) ?? say.mould,
      fill:
        grams === null
          ? null
          : { text: formatQuantity('mass', grams, { decimals: 0, withUnit: true }), flag: 'W' as const },
      headspace: filled('length', each.headspace, 'mm'),
      lining: liningText(each.liningKind, fills.get(each.id)),
    };
  });
  const planned = mould.values.moulds.reduce<number | null>(
    (sum, each) => (sum === null || each.count === null ? null : sum + each.count),
    moulds.length > 0 ? 0 : null,
  );
  const weighed = batch.mould.moulds.flatMap((each) =>
    each.actualFills.map((entry) => filled('mass', entry, 'g', false)?.text ?? null),
  );
  const boxes = Math.min(BLANK_MOULDS, Math.max(planned ?? BLANK_MOULDS, weighed.length, 1));
  return {
    moulds,
    density: moulds.length > 0 ? filled('density', batch.mould.density, 'g/mL') : null,
    actual: Array.from({ length: boxes }, (_, index) => weighed[index] ?? null),
  };
}
