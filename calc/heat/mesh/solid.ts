import { evenLayers, type Lengthwise, smoothLayers } from './lengthwise.ts';
import type { Face, Section } from './section.ts';

/** Which way the section is drawn out: a loaf lies along, an oval or a pot stands up. */
export type Extrusion = 'lying' | 'standing';

/** A piece of surface that belongs to one node. */
export interface Patch {
  readonly node: number;
  readonly face: Face;
  readonly areaM2: number;
  /** Heights between which it reaches, and of its node, m. */
  readonly lowM: number;
  readonly highM: number;
  readonly atM: number;
}

/**
 * A symmetric part of the body: the section repeated in layers. Node `i × layers + layer` is section
 * node i of a layer. A lying body is a quarter, its first layer the plane of symmetry at mid-length; a standing
 * one is a quarter of the plan, its layers going up.
 */
export interface Solid {
  readonly section: Section;
  readonly extrusion: Extrusion;
  readonly perLayer: number;
  readonly layers: number;
  /** The layers along the draw. */
  readonly along: Lengthwise;
  /** How much longer than the mean the body is at a section node. One for straight ends. */
  readonly stretch: Float64Array;
  readonly volumeM3: Float64Array;
  readonly patches: readonly Patch[];
  /** How much the wall's path lengthens for each metre outward, over its length, 1/m: 1/R for a round wall. */
  readonly wallCurvature: number;
  /** How many such parts make the whole body. */
  readonly copies: number;
  /** Nodes of the upright middle line from the base up, and their heights, m. */
  readonly axisNodes: Int32Array;
  readonly axisHeights: Float64Array;
}

export interface Draw {
  readonly extrusion: Extrusion;
  /** Half the length of a lying body, the depth of a standing one, m. */
  readonly reachM: number;
  readonly cells: number;
  /** Whether the layers may stand far apart because the field between them is smooth. Lying bodies only. */
  readonly smooth?: boolean;
  /** Half-length at the base over that at the rim, for ends that lean. One for straight ends. */
  readonly baseShare?: number;
}

/** Draws a section out into a solid. */
export function solidOf(
  section: Section,
  { extrusion, reachM, cells, smooth = false, baseShare = 1 }: Draw,
): Solid {
  const perLayer = section.x.length;
  const layers = cells + 1;
  const along = smooth ? smoothLayers(reachM, cells) : evenLayers(reachM, cells);
  const stretch = stretchOf(section, baseShare);
  const volumeM3 = new Float64Array(perLayer * layers);
  for (let layer = 0; layer < layers; layer++) {
    for (let i = 0; i < perLayer; i++) {
      volumeM3[i * layers + layer] = at(section.area, i) * at(along.thickness, layer) * at(stretch, i);
    }
  }
  const shape = {
    section,
    extrusion,
    perLayer,
    layers,
    along,
    stretch,
    volumeM3,
    wallCurvature: curvatureOf(section, extrusion),
    copies: 4,
  };
  const patches = gathered([...wallPatches(shape), ...closingPatches(shape)]);
  return { ...shape, patches, ...axisOf(shape) };
}

type Bare = Omit<Solid, 'patches' | 'axisNodes' | 'axisHeights'>;

/** By how much the wall turns from its start, square to the plane of symmetry, to its end, over its length. */
function curvatureOf(section: Section, extrusion: Extrusion): number {
  let heading = extrusion === 'lying' ? 0 : Math.PI / 2;
  let length = 0;
  let turned = 0;
  for (const { a, b, face } of section.outline) {
    if (face !== 'bottom' && face !== 'side') continue;
    const [dx, dy] = [at(section.x, b) - at(section.x, a), at(section.y, b) - at(section.y, a)];
    const next = Math.atan2(dy, dx);
    turned += Math.abs(next - heading);
    length += Math.hypot(dx, dy);
    heading = next;
  }
  return length > 0 ? turned / length : 0;
}

/** Length at a height over the mean length, so that the volume is that of straight ends at mid-height. */
function stretchOf(section: Section, baseShare: number): Float64Array {
  const rim = Math.max(...section.y);
  const raw = section.y.map((y) => (rim > 0 ? baseShare + (1 - baseShare) * (y / rim) : 1));
  const middle = (baseShare + 1) / 2;
  return baseShare === 1 ? new Float64Array(section.y.length).fill(1) : raw.map((value) => value / middle);
}

/** One patch for each node and face. */
function gathered(patches: readonly Patch[]): Patch[] {
  const byPlace = new Map<string, Patch>();
  for (const patch of patches) {
    const key = `${patch.node} ${patch.face}`;
    const known = byPlace.get(key);
    byPlace.set(
      key,
      known === undefined
        ? patch
        : {
            ...patch,
            areaM2: known.areaM2 + patch.areaM2,
            lowM: Math.min(known.lowM, patch.lowM),
            highM: Math.max(known.highM, patch.highM),
          },
    );
  }
  return [...byPlace.values()];
}

/** The outline of the section, drawn along. */
function wallPatches({ section, extrusion, layers, along, stretch }: Bare): Patch[] {
  const patches: Patch[] = [];
  const { place: places, thickness } = along;
  const reach = at(places, layers - 1);
  for (const { a, b, face } of section.outline) {
    const length = Math.hypot(at(section.x, a) - at(section.x, b), at(section.y, a) - at(section.y, b));
    for (let layer = 0; layer < layers; layer++) {
      const place = at(places, layer);
      const half = at(thickness, layer) / (layer === 0 || layer === layers - 1 ? 1 : 2);
      for (const [own, other] of [
        [a, b],
        [b, a],
      ] as const) {
        const ownY = at(section.y, own);
        const middleY = (ownY + at(section.y, other)) / 2;
        const lying = extrusion === 'lying';
        patches.push({
          node: own * layers + layer,
          face,
          areaM2: (length / 2) * at(thickness, layer) * at(stretch, own),
          lowM: lying ? Math.min(ownY, middleY) : Math.max(0, place - half),
          highM: lying ? Math.max(ownY, middleY) : Math.min(reach, place + half),
          atM: lying ? ownY : place,
        });
      }
    }
  }
  return patches;
}

/** The end of a lying body, or the base and the top of a standing one. */
function closingPatches({ section, extrusion, perLayer, layers, along }: Bare): Patch[] {
  const reach = at(along.place, layers - 1);
  const spans = heightSpans(section);
  return Array.from({ length: perLayer }, (_, i) => i).flatMap((i): Patch[] => {
    const areaM2 = at(section.area, i);
    if (extrusion === 'lying') {
      const [lowM, highM] = spans[i] ?? [0, 0];
      return [{ node: i * layers + layers - 1, face: 'end', areaM2, lowM, highM, atM: at(section.y, i) }];
    }
    return [
      { node: i * layers, face: 'bottom', areaM2, lowM: 0, highM: 0, atM: 0 },
      { node: i * layers + layers - 1, face: 'top', areaM2, lowM: reach, highM: reach, atM: reach },
    ];
  });
}

/** Between which heights the part of a section that a node holds lies. */
function heightSpans(section: Section): [number, number][] {
  const spans = Array.from(section.y, (y): [number, number] => [y, y]);
  for (const [edge, a] of section.edgeA.entries()) {
    const b = at(section.edgeB, edge);
    const middle = (at(section.y, a) + at(section.y, b)) / 2;
    for (const node of [a, b]) {
      const span = spans[node];
      if (span === undefined) continue;
      span[0] = Math.min(span[0], middle);
      span[1] = Math.max(span[1], middle);
    }
  }
  return spans;
}

/** The upright line through the middle: x = 0 at mid-length, or the centre of the plan. */
function axisOf({ section, extrusion, layers, along }: Bare) {
  if (extrusion === 'standing') {
    const centre = section.x.findIndex((x, i) => x === 0 && at(section.y, i) === 0);
    return {
      axisNodes: Int32Array.from({ length: layers }, (_, layer) => centre * layers + layer),
      axisHeights: along.place.slice(),
    };
  }
  const nodes = Array.from(section.x.keys())
    .filter((i) => at(section.x, i) === 0)
    .sort((a, b) => at(section.y, a) - at(section.y, b));
  return {
    axisNodes: Int32Array.from(nodes, (i) => i * layers),
    axisHeights: Float64Array.from(nodes, (i) => at(section.y, i)),
  };
}

function at(values: ArrayLike<number>, index: number): number {
  return values[index] ?? Number.NaN;
}
