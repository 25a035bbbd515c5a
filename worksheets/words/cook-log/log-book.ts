export const coreThroughTheCook = 'Core through the cook';
