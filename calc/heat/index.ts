export * from './properties/index.ts';
