import { saltToRaise } from '@larderwright/calc/cure';
import { fillOf, mouldGeometry } from '@larderwright/calc/mould';
import { pressPressureKPa } from '@larderwright/calc/press';
import { trimYield } from '@larderwright/calc/yield';
import { describe, expect, it } from 'vitest';
import { FIGURES } from '../../content/figures/index.ts';
import { expectFigure, value } from './figure-value.ts';

/* Every check is derived: arithmetic on the figures of the same exercise. */
describe('figures of the exercises agree with each other', () => {
  it('salt on water is salt over salt and water', () => {
    const salt = value('salt-example');
    expectFigure('salt-on-water-example', (salt / (salt + value('water-example'))) * 100);
  });

  it('bacon brings its share of salt', () => {
    const saltG = (value('bacon-example') * value('salt-of-bacon')) / 100;
    expectFigure('bacon-example-salt', saltG);
    expectFigure('bacon-example-share', (saltG / (value('bacon-example-batch') * 1000)) * 100);
  });

  it('a bacon lining brings its share of salt', () => {
    expectFigure('bacon-lining-salt', (value('bacon-lining') * value('salt-of-bacon')) / 100);
  });

  it('raising the salt counts the salt that is added', () => {
    const grams = saltToRaise(
      value('raise-batch') * 1000,
      value('raise-from') / 100,
      value('raise-to') / 100,
      'new-total',
    );
    expectFigure('raise-salt', grams ?? Number.NaN);
  });

  it('one part of clove in twenty is dosed, and stands below its ceiling', () => {
    const share = value('blend-example-dose') / (14 + 3 + 2 + 1);
    expectFigure('blend-example-share', share);
    expectFigure('blend-example-clove', share * value('blend-example-batch'));
    expect(share).toBeLessThan(value('clove-ceiling'));
  });

  it('a panade is a share of the meat', () => {
    expectFigure('panade-example', value('panade-example-meat') * 10 * value('panade-share'));
  });

  it('a third of the bar is more than the largest piece', () => {
    expect(value('garnish-example-bar') / 3).toBeGreaterThan(value('garnish-example-most'));
    expect(FIGURES['garnish-piece'].value).toEqual([6, value('garnish-example-most')]);
  });

  it('the trial balances, and prices its lean', () => {
    const parts = (['trial-lean', 'trial-fat', 'trial-bone', 'trial-waste'] as const).map((id, at) => ({
      role: at === 0 ? ('usable' as const) : ('waste' as const),
      massG: value(id) * 1000,
      valuePerKg: null,
    }));
    const trial = trimYield(value('trial-bought') * 1000, 8, parts);
    expectFigure('trial-gap', (trial.unaccountedG ?? Number.NaN) / 1000);
    expectFigure('trial-gap-share', (trial.unaccountedFraction ?? Number.NaN) * 100);
    expectFigure('trial-yield', (trial.usableFraction ?? Number.NaN) * 100);
    expect(trial.costWithoutCreditPerKg).toBeCloseTo(12.31, 2);
    expect(value('trial-gap-share')).toBeLessThan(value('balance-gap'));
  });

  it('three spells use the whole of the clock', () => {
    expect(value('clock-example')).toBe(3 * 40);
    expect(value('clock-example')).toBe(value('clock-reuse') * 60);
  });

  it('the warm box is too warm even when the probe reads high', () => {
    const least = value('receive-example') - value('receive-example-error');
    expectFigure('receive-example-least', least);
    expect(least).toBeGreaterThan(value('receive-poultry'));
  });

  it('the grinder and the chopper of the questions are past their limits', () => {
    expect(value('grind-example')).toBeGreaterThan(value('grind-stop'));
    expect(value('batter-example')).toBeGreaterThan(value('batter-end'));
  });

  it('a mould takes its depth less headspace, times density', () => {
    const geometry = mouldGeometry('rectangular', { length: 290, width: 95, depth: 75 });
    if (!geometry) throw new Error('The mould of the exercise has no geometry.');
    const fill = fillOf({
      geometry,
      waterFillMl: null,
      headspaceMm: value('fill-example-head'),
      liningThicknessMm: 0,
      densityGPerMl: value('mix-density'),
    });
    expectFigure('fill-example', (fill?.fillG ?? Number.NaN) / 1000);
  });

  it('the weight on the board gives its pressure', () => {
    expectFigure('press-example-area', pressPressureKPa(value('press-example'), 290 * 95) ?? Number.NaN);
  });

  // Specific heats of lean 3.4, fat 2.5, water 4.18, ice 2.1 kJ/(kg K), melting 334 kJ/kg: from memory.
  it('the ice pays for the work of the blade', () => {
    const endC = value('ice-end');
    const [lean, fat] = [value('ice-lean') * 3.4, value('ice-fat') * 2.5];
    const work = value('ice-chop') * (lean + fat);
    const cold = lean * (value('ice-lean-temp') - endC) + fat * (value('ice-fat-temp') - endC);
    expectFigure('ice-example', ((work + cold) / (2.1 * 2 + 334 + 4.18 * endC)) * 1000);
  });
});
