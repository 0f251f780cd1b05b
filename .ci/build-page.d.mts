export function buildPage(root: string): Promise<void>;
