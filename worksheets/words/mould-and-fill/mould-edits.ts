export const insideAMmCrust = (name: string, crustMm: number) => `${name}, inside a ${crustMm} mm crust`;
