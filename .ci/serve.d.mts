export function serveFolder(
  folder: string,
  port: number,
): Promise<{ address: string; close: () => Promise<void> }>;
