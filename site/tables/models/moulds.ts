import {
  CHILL_DEPTH_MM,
  crustCavity,
  fillOf,
  MOULD_SIZES,
  type MouldSize,
  mouldGeometry,
} from '@larderwright/calc/mould';
import { fixedText, plainText } from '@larderwright/calc/quantities';
import { FIGURES } from '../../../content/figures/index.ts';
import { column, numberColumn, type TablePart } from '../../lib/table-model.ts';

const density = usualDensity();

function usualDensity(): number {
  const { value } = FIGURES['mix-density'];
  if (typeof value !== 'number') throw new Error('The usual density of a mix is one figure.');
  return value;
}

function inside({ shape, measures }: MouldSize): string {
  const { length, width, depth, baseLength, baseWidth, diameter } = measures;
  if (shape === 'tapered')
    return `${length} × ${width} top, ${baseLength} × ${baseWidth} base, ${depth} deep`;
  if (diameter !== undefined) return `Ø ${diameter} × ${depth ?? length}`;
  return [length, width, depth].join(' × ');
}

const litres = (millilitres: number) => fixedText(millilitres / 1000, 2, 'down');

/** One mould, with what its own measures hold. */
function row(size: MouldSize): TablePart['rows'][number] {
  const brim = mouldGeometry(size.shape, size.measures);
  const geometry = size.crustMm ? mouldGeometry(size.shape, crustCavity(size.measures, size.crustMm)) : brim;
  const fill =
    geometry &&
    fillOf({
      geometry,
      waterFillMl: null,
      headspaceMm: size.headspaceMm ?? 0,
      liningThicknessMm: 0,
      densityGPerMl: density,
    });
  if (!brim || !fill) throw new Error(`The measures of mould "${size.id}" make no mould.`);
  return {
    id: size.id.replace('.', '-'),
    cells: [
      size.name,
      inside(size),
      litres(brim.volumeToMm3(brim.depthMm) / 1000),
      size.crustMm
        ? `crust ${size.crustMm}`
        : size.headspaceMm === null
          ? 'none'
          : plainText(size.headspaceMm),
      litres(fill.fillMl),
      fixedText(fill.fillG / 1000, 2, 'down'),
    ],
    mark: 'derived',
    words: ['mould', 'terrine', 'tin', 'volume', 'capacity'],
  };
}

/** Usual moulds, and what goes into them. */
export const moulds: readonly TablePart[] = [
  {
    id: 'sizes',
    title: 'Usual moulds by their inside measures',
    notes: [
      `Volumes are worked out from the measures, the mass with ${plainText(density)} g in each millilitre. Measure your own inside, and fill it once with water.`,
      `A fill deeper than ${CHILL_DEPTH_MM} mm is hard to chill in time.`,
    ],
    sources: ['common-practice'],
    columns: [
      column('Mould'),
      column('Inside, mm'),
      numberColumn('To the brim, L'),
      numberColumn('Headspace, mm'),
      numberColumn('Fill, L'),
      numberColumn('Fill, kg'),
    ],
    rows: MOULD_SIZES.map(row),
  },
];
