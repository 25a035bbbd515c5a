import type { Batch } from '@larderwright/calc/batch';
import type { PlanLine, PlanSlice, Purchase } from '@larderwright/calc/plan';
import { type Entry, fixedText, readEntry } from '@larderwright/calc/quantities';
import * as say from '#words/plan-and-cost/card-model.ts';
import { filled, worked } from '../batch-sheet/build/filled.ts';
import type { Filled } from '../batch-sheet/sheet-model.ts';
import { moneyText } from '../words/money.ts';
import { PRICING_SHARES } from '../words/plan-names.ts';
import { stepName } from './field-names.ts';
import { momentText } from './moment-text.ts';
import { planLineOf } from './plan-edits.ts';
import type { PlanOfBatch } from './plan-of.ts';
import type { PrintedCosts } from './printed-costs.ts';

/** A row of the printed shopping list. */
export interface BuyRow {
  readonly id: string;
  readonly name: string;
  readonly bowl: Filled | null;
  readonly trimYield: Filled | null;
  readonly buy: Filled | null;
  readonly price: Filled | null;
  readonly cost: Filled | null;
}

/** A row of the printed timeline. */
export interface StepRow {
  readonly id: string;
  readonly name: string;
  readonly least: Filled | null;
  readonly most: Filled | null;
  readonly notBefore: string | null;
  readonly beginBy: string | null;
}

/** The card of a plan as plain words and numbers. Null prints as a box to write in. */
export interface PlanCardModel {
  readonly want: string;
  readonly inputs: Readonly<
    Record<
      | 'portions'
      | 'portion'
      | 'finished'
      | 'cookLoss'
      | 'endLoss'
      | 'residue'
      | 'testPoach'
      | 'sundries'
      | 'labour'
      | 'labourRate'
      | 'overhead'
      | 'share'
      | 'tax'
      | 'chiller'
      | 'bath',
      Filled | null
    >
  >;
  readonly shareName: string;
  readonly results: Readonly<
    Record<
      | 'finished'
      | 'fill'
      | 'mix'
      | 'factor'
      | 'portions'
      | 'food'
      | 'full'
      | 'foodPerPortion'
      | 'fullPerPortion'
      | 'exTax'
      | 'incTax'
      | 'chillerRuns'
      | 'bathRuns'
      | 'moulds',
      Filled | null
    >
  >;
  /** The sum of the column of costs and the small things, as printed. */
  readonly columnTotal: Filled | null;
  readonly servingAt: string | null;
  readonly rows: readonly BuyRow[];
  readonly steps: readonly StepRow[];
}

const WANTS = {
  portions: say.fromPortionsToServe,
  finished: say.fromTheFinishedWeight,
  moulds: say.fromTheMouldsToFill,
} as const;

function made(text: string | null): Filled | null {
  return text === null ? null : { text, flag: 'W' };
}

/** A price as typed with what it is for. */
function priceText({ price, priceBasis, eachMass }: PlanLine, currency: string): Filled | null {
  if (priceBasis === 'sundries') return { text: say.smallThings, flag: 'E' };
  const said = filled('money', price, 'money');
  if (said === null) return null;
  const each = filled('mass', eachMass, 'g');
  const per = priceBasis === 'each' ? (each ? say.pieceOf(each.text) : say.piece) : priceBasis;
  return { ...said, text: `${said.text}${currency ? ` ${currency}` : ''} / ${per}` };
}

function buyText({ purchaseG, pieces }: Purchase): Filled | null {
  const mass = worked(purchaseG, true);
  return mass && pieces ? { ...mass, text: say.pieces(pieces.whole, mass.text) } : mass;
}

/** A duration in the unit it was typed in. */
function durationText(entry: Entry): Filled | null {
  const read = readEntry('time', entry);
  return filled('time', entry, read.state === 'ok' ? read.unit : entry.unit);
}

/** The card of a plan. */
export function planCard(batch: Batch, of: PlanOfBatch, printed: PrintedCosts): PlanCardModel {
  const { plan, values } = of;
  const { flow, costs, pricing } = values;
  const money = (amount: number | null) => made(amount === null ? null : moneyText(amount, pricing.currency));
  const typedMoney = (entry: Entry) => {
    const said = filled('money', entry, 'money');
    return said && { ...said, text: `${said.text}${plan.currency ? ` ${plan.currency}` : ''}` };
  };
  return {
    want: WANTS[plan.want],
    inputs: {
      portions: plan.want === 'portions' ? filled('count', batch.product.portions, 'count', false) : null,
      portion: filled('mass', plan.portionMass, 'g'),
      finished: plan.want === 'finished' ? filled('mass', plan.finished, 'kg') : null,
      cookLoss: filled('fraction', plan.cookLoss, '%'),
      endLoss: filled('fraction', plan.endLoss, '%'),
      residue: filled('fraction', plan.residue, '%'),
      testPoach: filled('mass', plan.testPoach, 'g'),
      sundries: typedMoney(plan.sundries),
      labour: durationText(plan.labour),
      labourRate: typedMoney(plan.labourRate),
      overhead: typedMoney(plan.overhead),
      share: filled('fraction', shareOf(plan), '%'),
      tax: filled('fraction', plan.tax, '%'),
      chiller: filled('mass', plan.chillerCapacity, 'kg'),
      bath: filled('count', plan.bathCapacity, 'count', false),
    },
    shareName: PRICING_SHARES[plan.pricing].short,
    results: {
      finished: worked(flow?.finishedG ?? null, true),
      fill: worked(flow?.fillG ?? null, true),
      mix: worked(flow?.mixG ?? null, true),
      factor: made(values.factor === null ? null : fixedText(values.factor, 3)),
      portions: made(values.portions === null ? null : `${values.portions}`),
      food: money(printed.food),
      full: money(printed.full),
      foodPerPortion: money(costs.foodPerPortion),
      fullPerPortion: money(costs.fullPerPortion),
      exTax: money(values.pricePerPortion.exTax),
      incTax: money(values.pricePerPortion.incTax),
      chillerRuns: made(values.chiller?.runs == null ? null : `${values.chiller.runs}`),
      bathRuns: made(values.bath?.runs == null ? null : `${values.bath.runs}`),
      moulds: made(mouldsText(of)),
    },
    columnTotal: made(printed.food === null ? null : moneyText(printed.food)),
    servingAt: plan.servingAt === null ? null : momentText(plan.servingAt),
    rows: values.purchases.map((purchase) => {
      const line = planLineOf(plan, purchase.lineId);
      const cost = printed.lines.get(purchase.lineId) ?? null;
      return {
        id: purchase.lineId,
        name: purchase.name || say.unnamedLine,
        bowl: worked(purchase.massG),
        trimYield: filled('fraction', line.trimYield, '%'),
        buy: buyText(purchase),
        price: priceText(line, plan.currency),
        cost: line.priceBasis === 'sundries' ? null : made(cost === null ? null : moneyText(cost)),
      };
    }),
    steps: values.timeline.map((timed, index) => {
      const step = plan.steps[index];
      return {
        id: timed.id,
        name: step ? stepName(step) : timed.id,
        least: step ? durationText(step.least) : null,
        most: step ? durationText(step.most) : null,
        notBefore: timed.earliestStart === null ? null : momentText(timed.earliestStart),
        beginBy: timed.latestStart === null ? null : momentText(timed.latestStart),
      };
    }),
  };
}

function shareOf(plan: PlanSlice): Entry {
  return { 'gross-profit': plan.grossProfit, 'food-cost': plan.foodCost, margin: plan.margin }[plan.pricing];
}

/** Moulds it takes, or the moulds that are there when the plan starts from them. */
function mouldsText({ plan, values }: PlanOfBatch): string | null {
  if (plan.want === 'moulds') return values.bath === null ? null : `${values.bath.load}`;
  const [only] = values.moulds;
  return values.moulds.length === 1 && only?.needed ? `${only.needed.count}` : null;
}
