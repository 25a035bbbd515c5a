const MOMENT = /^(\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d)([+-]\d\d:\d\d)$/;
const S_PER_MIN = 60;

function wallSeconds(moment: string): number | null {
  const wall = MOMENT.exec(moment)?.[1];
  return wall === undefined ? null : Date.parse(`${wall}Z`) / 1000;
}

/** The first moment and the steps to the others, or null where they do not come back letter for letter. */
export function packMoments(moments: readonly string[]): { first: string; steps: string } | null {
  const [first = ''] = moments;
  const walls = moments.map(wallSeconds);
  const steps: string[] = [];
  for (const [index, wall] of walls.entries()) {
    const before = walls[index - 1];
    if (wall === null || !Number.isFinite(wall)) return null;
    if (before === undefined || before === null) continue;
    const seconds = wall - before;
    steps.push(seconds % S_PER_MIN === 0 ? String(seconds / S_PER_MIN) : `${seconds}s`);
  }
  const packed = { first, steps: steps.join(' ') };
  const back = unpackMoments(packed.first, packed.steps);
  return back.every((moment, index) => moment === moments[index]) ? packed : null;
}

/** The moments again. Steps that are no numbers give moments that are none. */
export function unpackMoments(first: string, steps: string): string[] {
  const zone = MOMENT.exec(first)?.[2] ?? '';
  let wall = wallSeconds(first) ?? Number.NaN;
  const moments = [first];
  for (const step of steps.split(' ')) {
    wall += step.endsWith('s') ? Number(step.slice(0, -1)) : Number(step) * S_PER_MIN;
    const date = new Date(wall * 1000);
    moments.push(Number.isNaN(date.getTime()) ? '' : `${date.toISOString().slice(0, 19)}${zone}`);
  }
  return moments;
}
