export const coreThroughTheChill = 'Core through the chill';
