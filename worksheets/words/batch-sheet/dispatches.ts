export const whereItWent = 'Where it went';
export const takeOut = (to: string) => `Take out ${to}`;
export const takeOut2 = 'Take out';
export const customerCounterStore = 'Customer, counter, store';
export const howMuch = 'How much';
export const n12Portions14KgThe = '12 portions, 1.4 kg, the rest.';
export const writeItDown = 'Write it down';
