export function findBrowser(): string | undefined;
export const browserArguments: string[];
