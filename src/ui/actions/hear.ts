/** placeholder until playback lands (dev) */
export function stopSound(): void {}
export function hearView(_way?: string): void {}
export function hearPlayer(_id: string): void {}
