import fc from 'fast-check';

/**
 * Property tests draw the same cases in every run, so that a run can be repeated and a change is what breaks it.
 * `LARDERWRIGHT_SEED=… npm test -- unit` draws others.
 */
const SHIPPED_SEED = 20_261_125;

fc.configureGlobal({ seed: Number(process.env.LARDERWRIGHT_SEED ?? SHIPPED_SEED) });
