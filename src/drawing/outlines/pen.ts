/** A step of an outline, absolute coordinates. */
export type OutlineStep =
  | { readonly kind: "move" | "line"; readonly to: readonly [number, number] }
  | { readonly kind: "curve"; readonly points: readonly number[] }
  | { readonly kind: "close" };

/** Draws an outline by steps from where it stands. */
export class Pen {
  private readonly steps: OutlineStep[] = [];
  private x = 0;
  private y = 0;
  private isOpen = false;

  move(dx: number, dy: number): void {
    this.close();
    this.go(dx, dy);
    this.steps.push({ kind: "move", to: [this.x, this.y] });
    this.isOpen = true;
  }

  line(dx: number, dy: number): void {
    this.go(dx, dy);
    this.steps.push({ kind: "line", to: [this.x, this.y] });
  }

  curve(ax: number, ay: number, bx: number, by: number, cx: number, cy: number): void {
    const points: number[] = [];
    for (const [dx, dy] of [
      [ax, ay],
      [bx, by],
      [cx, cy],
    ] as const) {
      this.go(dx, dy);
      points.push(this.x, this.y);
    }
    this.steps.push({ kind: "curve", points });
  }

  /** @returns all steps, the last contour closed */
  finished(): readonly OutlineStep[] {
    this.close();
    return this.steps;
  }

  private close(): void {
    if (this.isOpen) this.steps.push({ kind: "close" });
    this.isOpen = false;
  }

  private go(dx: number, dy: number): void {
    this.x += dx;
    this.y += dy;
  }
}
