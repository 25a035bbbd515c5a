import { assess, type Batch, issueAssessment, issuedDifferences, newBatch } from '@larderwright/calc/batch';
import { newBinderSlice, withPanade } from '@larderwright/calc/binder';
import { newBrineSlice } from '@larderwright/calc/brine';
import { newCasingsSlice } from '@larderwright/calc/casings';
import { newChillBudgetSlice, newChillLot } from '@larderwright/calc/chill-budget';
import { newDryCurePiece, newDryCureSlice } from '@larderwright/calc/dry-cure';
import { newDryingSlice } from '@larderwright/calc/drying';
import { newGeleeSlice } from '@larderwright/calc/gelee';
import { loadIngredients } from '@larderwright/calc/ingredients';
import { newCrustSlice } from '@larderwright/calc/mould';
import { enteredEntry } from '@larderwright/calc/quantities';
import { newLooseSpice, newSeasoningSlice } from '@larderwright/calc/seasoning';
import { beforeAll, describe, expect, it } from 'vitest';
import { demos } from '../../../content/demo/index.ts';

const TODAY = '2026-11-25';
let composition: Awaited<ReturnType<typeof loadIngredients>>;
beforeAll(async () => {
  composition = await loadIngredients();
});

const demo = (slug: string): Batch => {
  const found = demos[slug];
  if (!found) throw new Error(`No demo ${slug}`);
  return structuredClone(found);
};
const judge = (batch: Batch) => assess(batch, { composition, today: TODAY });
const states = (batch: Batch) =>
  Object.fromEntries(judge(batch).verdicts.map(({ id, state }) => [id, state]));

describe('a batch with nothing in it', () => {
  const empty = newBatch({ id: 'x', at: '2026-11-25T08:00:00Z', zone: 'UTC' });

  it('passes no limit', () => {
    const { verdicts } = judge(empty);
    expect(verdicts.length).toBeGreaterThan(3);
    expect(verdicts.filter(({ state }) => state === 'pass')).toEqual([]);
  });

  it('names the rule sets and readings it lacks', () => {
    const fields = judge(empty).missing.map(({ field }) => field);
    expect(fields).toContain('process.cookRuleSetId');
    expect(fields).toContain('process.coolRuleSetId');
    expect(fields).toContain('process.logs');
  });
});

describe('the invented country terrine', () => {
  // Figures derived: sums of mass × composition over the lines, by hand calculation.
  it('makes the mix its formula says: 3850.1 g, 1.64 % salt, 2.96 % salt on water, 24.8 % fat', () => {
    const { mix } = judge(demo('country-terrine')).formula.values;
    expect(mix.totalG).toBeCloseTo(3850.1, 6);
    expect(mix.meatBlockG).toBeCloseTo(2800, 6);
    expect((mix.salt.fraction ?? 0) * 100).toBeCloseTo(1.64, 2);
    expect((mix.saltOnWaterFraction ?? 0) * 100).toBeCloseTo(2.96, 2);
    expect((mix.fat.fraction ?? 0) * 100).toBeCloseTo(24.8, 1);
  });

  // 5.4 g × 6.25 % on 2.8 kg and on 3.8501 kg; ion by 46.0055/68.9953. Derived.
  it('holds 120.5 mg/kg nitrite on the meat block, 87.7 on the total, 58.5 as ion on the total', () => {
    const { nitritePpmMeat, nitritePpmTotal, nitriteIonPpmTotal } = judge(demo('country-terrine')).cure
      .values;
    expect(nitritePpmMeat).toBeCloseTo(120.5, 1);
    expect(nitritePpmTotal).toBeCloseTo(87.7, 1);
    expect(nitriteIonPpmTotal).toBeCloseTo(58.5, 1);
  });

  it('passes every limit its plan names', () => {
    expect(new Set(Object.values(states(demo('country-terrine'))))).toEqual(new Set(['pass']));
  });

  it('does not pass the cook when the log stops at 11:30, before the hold is shown', () => {
    const batch = demo('country-terrine');
    for (const log of batch.process.logs)
      log.readings = log.readings.filter((reading) => reading.at < '2026-03-10T11:31');
    expect(states(batch)['cook.hold']).not.toBe('pass');
  });

  it('cannot tell cook or cooling when nobody entered the error of the probe', () => {
    const batch = demo('country-terrine');
    for (const log of batch.process.logs) log.error = { text: '', unit: 'dC', origin: 'default' };
    const after = states(batch);
    expect(after['cook.hold']).toBe('cannot-tell');
    expect(after['cool.leg.135F-70F']).toBe('cannot-tell');
  });

  it('is judged by what was weighed: twice the curing salt on the scale fails, whatever was planned', () => {
    const batch = demo('country-terrine');
    for (const line of batch.formula.lines) if (line.part === 'curing-salt') line.actual.text = '10.8';
    expect(states(batch)['cure.nitrite']).toBe('fail');
  });

  it('cannot tell any nitrite limit when no rule set is chosen', () => {
    const batch = demo('country-terrine');
    batch.cure.ruleSetId = null;
    expect(states(batch)['cure.nitrite']).toBe('cannot-tell');
  });

  it('lets the worst log rule: a second, colder loaf takes the pass away', () => {
    const batch = demo('country-terrine');
    const [first] = batch.process.logs;
    if (!first) throw new Error('no log');
    const colder = structuredClone(first);
    colder.id = 'second';
    for (const reading of colder.readings)
      reading.temperature.text = String(Number(reading.temperature.text) - 3);
    batch.process.logs.push(colder);
    const { cook } = judge(batch);
    expect(cook.verdicts[0]?.state).not.toBe('pass');
    expect(cook.values.rulingLogId).toBe('second');
  });

  it('prints both times for a reading typed in more than 15 min late', () => {
    const batch = demo('country-terrine');
    const reading = batch.process.logs[0]?.readings[4];
    if (!reading) throw new Error('no reading');
    reading.enteredAt = '2026-03-10T12:00:00-04:00';
    const late = judge(batch).findings.find(({ id }) => id === 'record.entered-late');
    expect(late?.params).toMatchObject({ count: 1, readAt: '2026-03-10T09:40:00-04:00', lateMin: 140 });
  });
});

describe('the invented pâté en croûte', () => {
  it('passes its cook and fails both legs of its cooling', () => {
    expect(states(demo('pate-en-croute-cooling-fails'))).toMatchObject({
      'cook.hold': 'pass',
      'cool.leg.135F-70F': 'fail',
      'cool.leg.135F-41F': 'fail',
    });
  });

  it('asks for a decision about the product once a limit has failed', () => {
    const batch = demo('pate-en-croute-cooling-fails');
    batch.deviations = [];
    expect(judge(batch).findings.map(({ id }) => id)).toContain('record.fail-without-decision');
  });

  it('is stopped when somebody released it', () => {
    const batch = demo('pate-en-croute-cooling-fails');
    for (const deviation of batch.deviations) deviation.decision = 'release';
    const stop = judge(batch).findings.find(({ id }) => id === 'record.released-while-failing');
    expect(stop?.severity).toBe('stop');
  });
});

describe('binder, seasoning and chill', () => {
  const begun = {
    binder: newBinderSlice(),
    seasoning: newSeasoningSlice(),
    chillBudget: newChillBudgetSlice(),
  };

  it('that a page has begun and nobody filled say nothing', () => {
    const after = judge({ ...demo('country-terrine'), ...begun });
    expect(judge(demo('country-terrine')).seasoning).toBeNull();
    expect(after.seasoning?.findings).toEqual([]);
    expect(after.chillBudget?.findings).toEqual([]);
    expect(after.binder?.findings).toEqual([]);
    expect(after.binder?.verdicts).toEqual([]);
  });

  it('stand with the rest of the batch once they are filled', () => {
    const seasoning = newSeasoningSlice();
    // Clove: ceiling 0.35 g/kg (common practice, no source).
    seasoning.loose = [{ ...newLooseSpice('c'), spiceId: 'clove', dose: enteredEntry('0.5', 'g/kg') }];
    const chillBudget = newChillBudgetSlice();
    const fat = { ...newChillLot('fat', 'fat'), temp: enteredEntry('9', 'C') };
    chillBudget.lots = [fat];
    const binder = withPanade(newBinderSlice(), 'bread', 300);
    // Over 7 °C a panade does harm: common practice, no source.
    binder.panadeTemp = enteredEntry('15', 'C');
    const ids = judge({ ...demo('country-terrine'), binder, seasoning, chillBudget }).findings.map(
      ({ id }) => id,
    );
    expect(ids).toContain('seasoning.over-ceiling');
    expect(ids).toContain('chill-budget.fat-too-warm');
    expect(ids).toContain('binder.panade-warm');
  });
});

describe('casings', () => {
  it('that a page has begun and nobody filled say nothing', () => {
    const after = judge({ ...demo('country-terrine'), casings: newCasingsSlice() });
    expect(judge(demo('country-terrine')).casings).toBeNull();
    expect(after.casings?.findings).toEqual([]);
  });

  it('hold what the formula weighs, and tell the animal they are of', () => {
    const batch = { ...demo('country-terrine'), casings: { ...newCasingsSlice(), casingId: 'hog-32-35' } };
    const { casings, formula, findings } = judge(batch);
    expect(casings?.values.batchG).toBe(formula.values.mix.totalG);
    expect(findings.find(({ id }) => id === 'casings.species')?.caution).toBe('allergens-listed');
  });
});

describe('a crust', () => {
  it('that a page has begun and nobody filled is no crust: a terrine has none', () => {
    const after = judge({ ...demo('country-terrine'), crust: newCrustSlice() });
    expect(after.crust).toBeNull();
    expect(after.findings).toEqual(judge(demo('country-terrine')).findings);
  });

  it('that was typed warns of pastry that leaks', () => {
    const crust = { ...newCrustSlice(), thickness: enteredEntry('2', 'mm') };
    const { findings } = judge({ ...demo('country-terrine'), crust });
    expect(findings.map(({ id }) => id)).toContain('crust.too-thin');
  });
});

describe('a jelly', () => {
  it('that a page has begun and nobody filled says nothing', () => {
    const after = judge({ ...demo('country-terrine'), gelee: newGeleeSlice() });
    expect(judge(demo('country-terrine')).gelee).toBeNull();
    expect(after.gelee?.findings).toEqual([]);
  });

  it('that is poured warns of the cooling clock and of what comes after the cook', () => {
    const gelee = { ...newGeleeSlice(), cavity: enteredEntry('1', 'L') };
    const { findings } = judge({ ...demo('country-terrine'), gelee });
    const told = findings.filter(({ stage }) => stage === 'gelee');
    expect(told.map(({ id, caution }) => [id, caution])).toEqual([
      ['gelee.adds-heat', 'cooling-clock'],
      ['gelee.after-the-cook', 'after-the-cook'],
    ]);
  });
});

describe('whole muscle and drying', () => {
  const begun = { dryCure: newDryCureSlice(), brine: newBrineSlice(), drying: newDryingSlice() };

  it('that a page has begun and nobody filled say nothing', () => {
    const plain = judge(demo('country-terrine'));
    const after = judge({ ...demo('country-terrine'), ...begun });
    expect(plain.dryCure).toBeNull();
    expect(after.findings).toEqual(plain.findings);
    expect(after.verdicts).toEqual(plain.verdicts);
    expect(after.missing).toEqual(plain.missing);
  });

  // Derived: 20 g of a 6.25 % pack on 1 kg of meat is 1,250 mg/kg.
  it('stop the batch: curing salt weighed as salt on one piece of two, each named', () => {
    const dryCure = newDryCureSlice();
    const piece = (name: string, cureG: string) => ({
      ...newDryCurePiece(name),
      name,
      skinOff: enteredEntry('1000', 'g'),
      curingSaltActual: enteredEntry(cureG, 'g'),
    });
    dryCure.product = 'bacon';
    dryCure.pack.strength.nitrite = enteredEntry('6.25', '%');
    dryCure.pieces = [piece('Belly', '20'), piece('Loin', '1.9')];
    const batch = { ...demo('country-terrine'), dryCure };
    batch.cure.ruleSetId = 'us-federal';
    const { findings, verdicts } = judge(batch);
    const gross = findings.filter(({ id }) => id === 'dry-cure.gross-error');
    expect(gross.map(({ params }) => params)).toEqual([{ name: 'Belly', ppm: 1250 }]);
    const nitrite = verdicts.filter(({ id }) => id === 'dry-cure.nitrite');
    expect(nitrite.map(({ state, params }) => [params.piece, state])).toEqual([
      ['Belly', 'fail'],
      ['Loin', 'pass'],
    ]);
  });

  it('stop the batch: dried goods need an accepted plan, whatever else is right', () => {
    const drying = { ...newDryingSlice(), kind: 'dried-muscle' as const };
    const { findings, verdicts } = judge({ ...demo('country-terrine'), drying });
    const plan = findings.find(({ id }) => id === 'drying.approved-plan');
    expect(plan?.severity).toBe('stop');
    expect(verdicts.find(({ id }) => id === 'drying.plan')?.state).toBe('cannot-tell');
  });

  it('name the table of whole muscle beside that of mixed meat', () => {
    const brine = { ...newBrineSlice(), method: 'equilibrium' as const };
    const subjects = judge({ ...demo('country-terrine'), brine }).ruleSets.map(({ subject }) => subject);
    expect(subjects).toEqual(['nitrite', 'nitrite in whole muscle', 'cook', 'cool']);
  });

  it('differ from what was issued when any piece does', () => {
    const drying = { ...newDryingSlice(), kind: 'dried-muscle' as const };
    const batch = { ...demo('country-terrine'), drying };
    const issued = issueAssessment(batch, judge(batch), composition, '2026-03-11T09:00:00-04:00');
    const twice = { ...issued, verdicts: [...issued.verdicts, ...issued.verdicts] };
    expect(issuedDifferences(twice, judge(batch)).map(({ what }) => what)).toContain('drying.plan');
  });
});

describe('an assessment', () => {
  it('is the same for the same batch, and changes nothing in it', () => {
    const batch = demo('country-terrine');
    const before = JSON.stringify(batch);
    expect(JSON.stringify(judge(batch))).toBe(JSON.stringify(judge(batch)));
    expect(JSON.stringify(batch)).toBe(before);
  });

  it('says which rule sets were used, and that a check is overdue after twelve months', () => {
    const today = judge(demo('country-terrine')).ruleSets;
    expect(today.map(({ subject }) => subject)).toEqual(['nitrite', 'cook', 'cool']);
    expect(today.every(({ overdue }) => !overdue)).toBe(true);
    const later = assess(demo('country-terrine'), { composition, today: '2027-11-27' }).ruleSets;
    expect(later.every(({ overdue }) => overdue)).toBe(true);
  });

  it('as issued agrees with itself, and names what differs once the batch is changed', () => {
    const batch = demo('country-terrine');
    const issued = issueAssessment(batch, judge(batch), composition, '2026-03-11T09:00:00-04:00');
    expect(issuedDifferences(issued, judge(batch))).toEqual([]);
    batch.cure.ruleSetId = null;
    expect(issuedDifferences(issued, judge(batch)).map(({ what }) => what)).toContain('cure.nitrite');
  });
});
