import type { HeatRun } from '../heat/index.ts';

/**
 * The upright cut through the middle of the body, half of it, as a net of triangles: across a loaf or roll, along a
 * mould that stands. Plain data.
 */
export interface SectionNet {
  readonly xMm: Float32Array;
  readonly yMm: Float32Array;
  /** Three node numbers for each triangle. */
  readonly triangles: Uint16Array;
  readonly cut: 'across' | 'along';
}

/** The cut at one moment: °C of every node of the net. */
export interface SectionPicture {
  readonly timeMin: number;
  readonly tempC: Float32Array;
}

/** Which nodes of a run's pictures lie in the cut, and the net they form. */
export function sectionOfRun({ network }: HeatRun): { net: SectionNet; nodes: Uint32Array } {
  const { section, extrusion, perLayer, layers, along: draw } = network.solid;
  if (extrusion === 'lying') {
    return {
      net: {
        xMm: millimetres(section.x),
        yMm: millimetres(section.y),
        triangles: Uint16Array.from(section.triangles.flat()),
        cut: 'across',
      },
      nodes: Uint32Array.from({ length: perLayer }, (_, i) => i * layers),
    };
  }
  const along = Array.from(section.x.keys())
    .filter((i) => section.y[i] === 0)
    .sort((a, b) => (section.x[a] ?? 0) - (section.x[b] ?? 0));
  const columns = along.length;
  const triangles: number[] = [];
  for (let layer = 0; layer + 1 < layers; layer++) {
    for (let column = 0; column + 1 < columns; column++) {
      const a = layer * columns + column;
      triangles.push(a, a + 1, a + columns, a + 1, a + columns + 1, a + columns);
    }
  }
  const places = Array.from({ length: layers }, (_, layer) => layer);
  return {
    net: {
      xMm: Float32Array.from(places.flatMap(() => along.map((i) => 1000 * (section.x[i] ?? 0)))),
      yMm: Float32Array.from(places.flatMap((layer) => along.map(() => 1000 * (draw.place[layer] ?? 0)))),
      triangles: Uint16Array.from(triangles),
      cut: 'along',
    },
    nodes: Uint32Array.from(places.flatMap((layer) => along.map((i) => i * layers + layer))),
  };
}

/** The pictures of a run, cut down to the nodes of the section. */
export function sectionPictures(run: HeatRun, nodes: Uint32Array): SectionPicture[] {
  return run.pictures
    .map(({ timeMin, tempC }) => ({
      timeMin,
      tempC: Float32Array.from(nodes, (node) => tempC[node] ?? Number.NaN),
    }))
    .sort((a, b) => a.timeMin - b.timeMin);
}

const millimetres = (metres: Float64Array) => Float32Array.from(metres, (value) => 1000 * value);

/** Temperature of the cut at a place, °C, by the plane through the triangle it lies in; null outside. */
export function sectionAt(net: SectionNet, tempC: Float32Array, xMm: number, yMm: number): number | null {
  const across = Math.abs(xMm);
  for (let i = 0; i < net.triangles.length; i += 3) {
    const [a, b, c] = [net.triangles[i] ?? 0, net.triangles[i + 1] ?? 0, net.triangles[i + 2] ?? 0];
    const shares = sharesIn(net, [a, b, c], across, yMm);
    if (shares === null) continue;
    const [sa, sb, sc] = shares;
    return sa * (tempC[a] ?? Number.NaN) + sb * (tempC[b] ?? Number.NaN) + sc * (tempC[c] ?? Number.NaN);
  }
  return null;
}

/** Room at the edge of a triangle, so that a point on its side is in it. */
const EDGE = 1e-4;

function sharesIn(
  { xMm, yMm }: SectionNet,
  [a, b, c]: readonly [number, number, number],
  x: number,
  y: number,
): [number, number, number] | null {
  const [ax, ay, bx, by] = [xMm[a] ?? 0, yMm[a] ?? 0, xMm[b] ?? 0, yMm[b] ?? 0];
  const [cx, cy] = [xMm[c] ?? 0, yMm[c] ?? 0];
  const twice = (bx - ax) * (cy - ay) - (cx - ax) * (by - ay);
  const sb = ((x - ax) * (cy - ay) - (cx - ax) * (y - ay)) / twice;
  const sc = ((bx - ax) * (y - ay) - (x - ax) * (by - ay)) / twice;
  const sa = 1 - sb - sc;
  return sa >= -EDGE && sb >= -EDGE && sc >= -EDGE ? [sa, sb, sc] : null;
}
