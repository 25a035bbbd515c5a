import type { Surroundings } from './around.ts';

/** What the food of one net gets through walls that have no state, W; the same for the bath. */
interface SteadyHeat {
  /** Adds to `heat` of each food node, from the temperatures of food and media, at a time in s. */
  readonly add: (timeS: number, tempC: Float64Array, mediaC: Float64Array, heat: Float64Array) => void;
  /** What the last call found: W gained through the faces, and W drawn from the bath. */
  readonly told: { gained: number; fromBath: number };
}

/** After so many of its own times a layer has settled. */
const SETTLED = 8;

/** `as number` below: the loops stay within arrays whose lengths are fixed above them. */
export function steadyHeatOf(around: Surroundings, media: number): SteadyHeat {
  const { steady, settling = null, bathMedium, bathRate } = around;
  const needsBath = bathRate !== null;
  const direct = gathered(around, media);
  const rings = (steady?.rings ?? []).map((ring) => ({
    ...ring,
    count: ring.food.length,
    inverse: ring.pivot.map((own) => 1 / own),
    out: sumsOf(ring.outward, ring.media),
    driven: new Float64Array(ring.food.length),
  }));
  const longest = rings.reduce((most, { count }) => Math.max(most, count), 0);
  const ringC = new Float64Array(longest);
  const knownC = new Float64Array(media).fill(Number.NaN);
  const told = { gained: 0, fromBath: 0 };

  /** What the media drive through each wall, anew only when they have changed. */
  function drive(mediaC: Float64Array): void {
    let same = true;
    for (let m = 0; m < media; m++) {
      if (knownC[m] !== mediaC[m]) same = false;
      knownC[m] = mediaC[m] as number;
    }
    if (same) return;
    driveInto(direct.driven, direct.outward, media, mediaC);
    for (const { driven, outward, media: own } of rings) driveInto(driven, outward, own, mediaC);
  }

  function add(timeS: number, tempC: Float64Array, mediaC: Float64Array, heat: Float64Array): void {
    drive(mediaC);
    let gained = 0;
    let fromBath = 0;
    const { node, out, driven, outward } = direct;
    for (let k = 0; k < node.length; k++) {
      const own = node[k] as number;
      const passed = (driven[k] as number) - (out[k] as number) * (tempC[own] as number);
      heat[own] = (heat[own] as number) + passed;
      gained += passed;
    }
    if (needsBath) {
      const bathC = mediaC[bathMedium] as number;
      for (let k = 0; k < node.length; k++)
        fromBath +=
          (outward[k * media + bathMedium] as number) * (bathC - (tempC[node[k] as number] as number));
    }
    for (let r = 0; r < rings.length; r++) {
      const ring = rings[r] as (typeof rings)[number];
      const { food, inward, back, inverse, count } = ring;
      let before = 0;
      for (let i = 0; i < count; i++) {
        const own =
          (ring.driven[i] as number) +
          (inward[i] as number) * (tempC[food[i] as number] as number) +
          (back[i] as number) * before;
        before = own * (inverse[i] as number);
        ringC[i] = before;
      }
      let later = 0;
      for (let i = count - 1; i >= 0; i--) {
        const own = (ringC[i] as number) + later * (inverse[i] as number);
        later = (back[i] as number) * own;
        const at = food[i] as number;
        heat[at] = (heat[at] as number) + (inward[i] as number) * (own - (tempC[at] as number));
        gained += (ring.driven[i] as number) - (ring.out[i] as number) * own;
        if (needsBath)
          fromBath +=
            (ring.outward[i * ring.media + bathMedium] as number) * ((mediaC[bathMedium] as number) - own);
      }
    }
    if (settling !== null) {
      const { tauS, start, node: to, heatJ, bathJ, fromS } = settling;
      for (let g = 0; g < tauS.length; g++) {
        const tau = tauS[g] as number;
        if (timeS - fromS > SETTLED * tau) continue;
        const share = Math.exp((fromS - timeS) / tau) / tau;
        fromBath -= share * (bathJ[g] as number);
        const end = start[g + 1] as number;
        for (let k = start[g] as number; k < end; k++) {
          const own = to[k] as number;
          heat[own] = (heat[own] as number) + share * (heatJ[k] as number);
        }
      }
    }
    told.gained = gained;
    told.fromBath = fromBath;
  }

  return { add, told };
}

/** The direct exchanges, one entry for each food node. */
function gathered({ exchanges }: Surroundings, media: number) {
  const places = new Map<number, number>();
  for (const { node } of exchanges) if (!places.has(node)) places.set(node, places.size);
  const outward = new Float64Array(places.size * media);
  for (const { node, medium, conductance } of exchanges) {
    const place = (places.get(node) ?? 0) * media + medium;
    outward[place] = (outward[place] ?? 0) + conductance;
  }
  return {
    node: Int32Array.from(places.keys()),
    outward,
    out: sumsOf(outward, media),
    driven: new Float64Array(places.size),
  };
}

function sumsOf(outward: Float64Array, media: number): Float64Array {
  const sums = new Float64Array(outward.length / media);
  for (let i = 0; i < outward.length; i++) {
    const place = Math.floor(i / media);
    sums[place] = (sums[place] as number) + (outward[i] as number);
  }
  return sums;
}

function driveInto(driven: Float64Array, outward: Float64Array, media: number, mediaC: Float64Array): void {
  for (let i = 0; i < driven.length; i++) {
    let sum = 0;
    for (let m = 0; m < media; m++) sum += (outward[i * media + m] as number) * (mediaC[m] as number);
    driven[i] = sum;
  }
}
