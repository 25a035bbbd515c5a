import { cookPlanStage, mouldBody, newChillLeg } from '@larderwright/calc/cook-plan';
import { MOULD_SIZES, mouldStage } from '@larderwright/calc/mould';
import { blankEntry, enteredEntry } from '@larderwright/calc/quantities';
import { describe, expect, it } from 'vitest';
import { contextOf, degrees, LOAF, mm, mouldOf, mouldsOf, planTo68, problemOf, solved } from './plans.ts';

const loaf = mouldOf(LOAF);

/** What the mould's own subject fills it with, mL. */
function filledMl(mould: ReturnType<typeof mouldOf>): number {
  const [fill] = mouldStage(mouldsOf(mould), { totalMassG: null }).values.moulds;
  return fill?.fillMl ?? Number.NaN;
}

describe('the body of food in a mould', () => {
  it.each(MOULD_SIZES.map((size) => [size.name, size] as const))(
    '%s: as much as its fill, bare',
    (_, size) => {
      const mould = mouldOf(size);
      const body = mouldBody(mould);
      // Derived: the same volume by two ways; a tapered box by the prismatoid rule in both.
      expect((body?.volumeMl ?? 0) / filledMl(mould)).toBeCloseTo(1, 3);
      const problem = problemOf(planTo68(), contextOf(mould));
      expect(problem.massG).toBeCloseTo(1.04 * filledMl(mould), -1);
    },
  );

  it.each(MOULD_SIZES.map((size) => [size.name, size] as const))(
    '%s: a lining leaves no less than its fill, and little more',
    (_, size) => {
      const mould = mouldOf(size, { liningKind: 'fat', liningThickness: mm(3) });
      const share = (mouldBody(mould)?.volumeMl ?? 0) / filledMl(mould);
      // The fill takes the corners of the lining off twice, as its overlapping joins do.
      expect(share).toBeGreaterThan(0.999);
      expect(share).toBeLessThan(1.06);
    },
  );

  it('is widened by water that says the mould holds more, never narrowed by water that says less', () => {
    const fluted = mouldBody({ ...loaf, waterFill: enteredEntry('1980', 'mL') });
    const rounded = mouldBody({ ...loaf, waterFill: enteredEntry('1700', 'mL') });
    // 240 × 100 × 75 mm are 1800 mL.
    expect(fluted?.volumeMl).toBeCloseTo(1980, 0);
    expect(fluted?.mixDepthMm).toBe(75);
    expect(rounded?.volumeMl).toBeCloseTo(1800, 6);
  });

  it('is nothing while a measure, the headspace or the lining is unknown, or leaves no room', () => {
    expect(mouldBody({ ...loaf, dimensions: { ...loaf.dimensions, depth: blankEntry('mm') } })).toBeNull();
    expect(mouldBody({ ...loaf, headspace: blankEntry('mm') })).toBeNull();
    expect(mouldBody({ ...loaf, liningKind: 'fat' })).toBeNull();
    expect(mouldBody({ ...loaf, headspace: mm(80) })).toBeNull();
    expect(mouldBody({ ...loaf, liningKind: 'fat', liningThickness: mm(40) })).toBeNull();
  });
});

describe('what lies round it', () => {
  it('lining on every side, crust outside it, wall outside that, and no lid unless told', () => {
    const lined = { ...loaf, liningKind: 'fat' as const, liningThickness: mm(3) };
    const { coat } = problemOf(planTo68({ vessel: 'stoneware' }), contextOf(lined));
    expect(coat.side.map(({ thicknessM }) => thicknessM)).toEqual([0.003, 0.008]);
    expect(coat.top.map(({ thicknessM }) => thicknessM)).toEqual([0.003]);
    const lidded = problemOf(planTo68({ vessel: 'stoneware', lid: 'lid' }), contextOf(lined));
    expect(lidded.coat.top).toHaveLength(3);
    const bare = problemOf(planTo68({ vessel: 'none' }), contextOf(loaf));
    expect(bare.coat.side).toEqual([]);
  });

  it('takes the typed wall instead of the usual one', () => {
    const { coat } = problemOf(planTo68({ wall: mm(5) }), contextOf(loaf));
    expect(coat.side[0]?.thicknessM).toBe(0.005);
  });
});

describe('the water', () => {
  it('stands as high as water and pan make it, and the base of the mould takes its part', () => {
    // Derived: 3000 cm³ over 350 × 250 less 240 × 100 mm of a roll-thin wall.
    const slice = planTo68({ vessel: 'none' });
    const { values } = cookPlanStage(slice, contextOf(loaf));
    expect(values.levelMm).toBeCloseTo(3_000_000 / (350 * 250 - 240 * 100), 6);
    const stone = problemOf(planTo68({ level: mm(50) }), contextOf(loaf));
    expect(stone.stages[0]?.heat.water?.levelMm).toBeCloseTo(50 - 8, 9);
  });

  it('is each mould’s share of the pan, so that more moulds in one pan are no quicker', () => {
    const pan = { panLength: mm(450), panWidth: mm(350), level: mm(50) };
    const minutes = (mouldsInPan: string) => {
      const slice = planTo68({ ...pan, mouldsInPan: enteredEntry(mouldsInPan, 'count') });
      return solved(problemOf(slice, contextOf(loaf))).prediction.targetMin ?? Number.POSITIVE_INFINITY;
    };
    expect(minutes('3')).toBeGreaterThan(minutes('1'));
  });

  it('has no room in a pan that its moulds fill', () => {
    const slice = planTo68({ mouldsInPan: enteredEntry('3', 'count') });
    const { values, findings } = cookPlanStage(slice, contextOf(loaf));
    expect(values.ground.problem).toBeNull();
    expect(findings.map(({ id }) => id)).toContain('cook-plan.pan-full');
  });

  it('keeps its warmth from the cook into the hold', () => {
    const problem = problemOf(planTo68({ hold: enteredEntry('20', 'min') }), contextOf(loaf));
    const { marks, bathC, timesMin } = solved(problem);
    const turn = marks[0]?.endMin ?? 0;
    const at = timesMin.findIndex((timeMin) => timeMin >= turn);
    expect(marks.map(({ kind }) => kind)).toEqual(['cook', 'hold', 'rest', 'chill']);
    expect(Math.abs((bathC[at + 1] ?? 0) - (bathC[at - 1] ?? 0))).toBeLessThan(3);
  });
});

describe('a wet surface in an oven', () => {
  it('gets no hotter than the boil, under foil or crust it may', () => {
    const open = solved(problemOf(planTo68({ method: 'oven', oven: degrees(220) }), contextOf(loaf)));
    expect(Math.max(...open.topC)).toBeLessThan(100);
    const { stages } = problemOf(
      planTo68({ method: 'oven', oven: degrees(220), lid: 'lid' }),
      contextOf(loaf),
    );
    expect(stages[0]?.heat.faces).toBeUndefined();
    const roll = problemOf(planTo68({ method: 'oven', oven: degrees(220), vessel: 'none' }), contextOf(loaf));
    expect(roll.stages[0]?.heat.air.tempC).toBeLessThan(100.1);
  });
});

describe('from limit to target', () => {
  // FSIS Appendix A (2021): 155 °F asks for 22 s of meat without poultry, its column of 6.5-log.
  const rules = { cookRuleSetId: 'us-fsis-meat-6.5', cookLimitId: 'fsis-155F' };
  const pork = {
    hasPoultry: false,
    poultryKind: null,
    fatFraction: 0.25,
    comminuted: true,
    hasPorkLiver: false,
  };

  it('takes temperature and hold of the very row that was chosen', () => {
    const problem = problemOf(
      planTo68({ target: blankEntry('C') }),
      contextOf(loaf, { ...rules, facts: pork }),
    );
    expect(problem.targetC).toBeCloseTo(((155 - 32) * 5) / 9, 9);
    expect(problem.holdMin).toBeCloseTo(22 / 60, 9);
    expect(problem.stages[1]?.kind).toBe('hold');
  });

  it('asks for a limit or a target, and guesses neither', () => {
    const { missing, values } = cookPlanStage(planTo68({ target: blankEntry('C') }), contextOf(loaf));
    expect(values.ground.problem).toBeNull();
    expect(missing).toContainEqual({ field: 'cookPlan.target', neededFor: 'cook-plan.curve' });
    expect(missing).toContainEqual({ field: 'process.cookRuleSetId', neededFor: 'cook-plan.limit' });
  });

  it('computes nothing from a field that cannot be read', () => {
    for (const field of ['start', 'oven', 'bathWater', 'bathStart', 'rest', 'altitude', 'level'] as const) {
      const slice = { ...planTo68(), [field]: enteredEntry('warm', 'C') };
      const { missing, values } = cookPlanStage(slice, contextOf(loaf));
      expect(values.ground.problem, field).toBeNull();
      expect(missing.map((input) => input.field)).toContain(`cookPlan.${field}`);
    }
  });
});

describe('the loaf of common practice', () => {
  it.each([50, 60])(
    'reaches 68 °C in 90–130 min in tap water of %i °C, every other input as shipped (common practice, no source)',
    (bathStartC) => {
      const tin = mouldOf(LOAF, { liningKind: 'fat', liningThickness: mm(3) });
      const slice = planTo68({
        vessel: 'tinplate',
        cover: 'covered',
        oven: degrees(177),
        bathStart: degrees(bathStartC),
        level: mm(50),
      });
      // 1.9 kg in 1.8 L.
      const context = contextOf(tin, { moulds: mouldsOf(tin, '1.0556') });
      const { prediction } = solved(problemOf(slice, context), 'exact');
      expect(prediction.targetMin).toBeGreaterThan(90);
      expect(prediction.targetMin).toBeLessThan(130);
    },
  );
});

describe('every mould through every way of cooking and chilling', () => {
  it.each(['bath', 'oven', 'steam', 'poach'] as const)('%s', (method) => {
    for (const size of MOULD_SIZES.filter((_, i) => i % 3 === 0)) {
      const slice = planTo68({
        method,
        cover: 'covered',
        vessel: size.headspaceMm === null ? 'none' : 'stoneware',
        press: enteredEntry('30', 'min'),
        chill: [
          { ...newChillLeg('a', 'ice-bath'), minutes: enteredEntry('30', 'min') },
          { ...newChillLeg('b', 'blast'), minutes: enteredEntry('30', 'min'), top: 'covered' },
          { ...newChillLeg('c', 'blast'), until: degrees(8), standing: 'stacked' },
        ],
      });
      const outcome = solved(problemOf(slice, contextOf(mouldOf(size))));
      expect(
        outcome.marks.map(({ kind }) => kind),
        size.id,
      ).toEqual([...['cook', 'rest', 'press', 'chill', 'chill', 'chill']]);
      expect(outcome.prediction.targetMin, size.id).toBeGreaterThan(5);
      expect(outcome.prediction.endC, size.id).toBeLessThan(8.01);
    }
  });

  it('takes in as heat what it holds more of, in the cook alone', () => {
    for (const size of MOULD_SIZES) {
      const problem = problemOf(
        planTo68({ rest: enteredEntry('0', 'min'), chill: [] }),
        contextOf(mouldOf(size)),
      );
      const { energy } = solved(problem);
      expect(Math.abs(energy.inJ / energy.riseJ - 1), size.id).toBeLessThan(1e-3);
      // Sane: the mass from 4 °C to somewhere between its target and the boil at 3.2 kJ/(kg·K), and its mould.
      const perKg = energy.riseJ / problem.massG;
      expect(perKg, size.id).toBeGreaterThan(3.1 * 64);
      expect(perKg, size.id).toBeLessThan(3.3 * 96 * 3);
    }
  });
});
