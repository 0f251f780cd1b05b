/** Paint that an element gives its children. */
interface Paint {
  readonly fill: string;
  readonly stroke: string;
  readonly strokeWidth: number;
}

/**
 * Paints a drawing on a canvas: the page's policy lets no picture be made from text, and none is
 * needed, since the drawings hold shapes only.
 * @param root - the drawing, its texts outlined
 * @param context - canvas, already scaled
 */
export function paintTree(root: SVGElement, context: CanvasRenderingContext2D): void {
  paint(root, context, { fill: "#000", stroke: "none", strokeWidth: 1 });
}

function paint(element: Element, context: CanvasRenderingContext2D, before: Paint): void {
  const own: Paint = {
    fill: element.getAttribute("fill") ?? before.fill,
    stroke: element.getAttribute("stroke") ?? before.stroke,
    strokeWidth: Number(element.getAttribute("stroke-width") ?? before.strokeWidth),
  };
  context.save();
  transform(element.getAttribute("transform") ?? "", context);
  const shape = shapeOf(element);
  if (shape !== undefined) {
    if (own.fill !== "none") fill(context, shape, own.fill);
    if (own.stroke !== "none") stroke(context, shape, own);
  }
  if (element.localName === "text") write(element, context, own);
  for (const child of element.children) paint(child, context, own);
  context.restore();
}

function fill(context: CanvasRenderingContext2D, shape: Path2D, colour: string): void {
  context.fillStyle = colour;
  context.fill(shape);
}

function stroke(context: CanvasRenderingContext2D, shape: Path2D, paint: Paint): void {
  context.strokeStyle = paint.stroke;
  context.lineWidth = paint.strokeWidth;
  context.stroke(shape);
}

/** The two transforms that drawings use: `translate(x y)` and `scale(s)`. */
function transform(text: string, context: CanvasRenderingContext2D): void {
  for (const [, name, values = ""] of text.matchAll(/(translate|scale)\(([^)]*)\)/g)) {
    const [x = 0, y] = values.split(/[ ,]+/).map(Number);
    if (name === "scale") context.scale(x, y ?? x);
    else context.translate(x, y ?? 0);
  }
}

function shapeOf(element: Element): Path2D | undefined {
  const value = (name: string) => Number(element.getAttribute(name) ?? 0);
  const shape = new Path2D();
  switch (element.localName) {
    case "path":
      return new Path2D(element.getAttribute("d") ?? "");
    case "rect":
      shape.rect(value("x"), value("y"), value("width"), value("height"));
      return shape;
    case "circle":
      shape.arc(value("cx"), value("cy"), value("r"), 0, 2 * Math.PI);
      return shape;
    default:
      return undefined;
  }
}

/** A text that the faces of the drawing do not have. */
function write(element: Element, context: CanvasRenderingContext2D, { fill: ink }: Paint): void {
  const size = element.closest("[font-size]")?.getAttribute("font-size") ?? "12";
  context.font = `${Number.parseFloat(size)}px serif`;
  context.textAlign = element.getAttribute("text-anchor") === "end" ? "right" : "left";
  context.fillStyle = ink;
  context.fillText(
    element.textContent,
    Number(element.getAttribute("x") ?? 0),
    Number(element.getAttribute("y") ?? 0),
  );
}
